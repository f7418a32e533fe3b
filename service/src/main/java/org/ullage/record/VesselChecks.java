package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;

/** The gas side of one vessel with a membrane. */
final class VesselChecks {

    private final ServiceBook book;
    private final VesselNote vessel;
    private final AbsolutePressure ambient;
    private final @Nullable Temperature gasToday;

    VesselChecks(ServiceBook book, VesselNote vessel, AbsolutePressure ambient, @Nullable Temperature gasToday) {
        this.book = book;
        this.vessel = vessel;
        this.ambient = ambient;
        this.gasToday = gasToday;
    }

    List<ChecklistItem> items() {
        List<ChecklistItem> items = new ArrayList<>();
        items.add(isolate());
        items.add(new ChecklistItem(
                named("drain the water side to zero pressure and leave the drain open while the charge is read."),
                "Under water pressure the gas shows the pressure of the loop, whatever its charge.",
                CheckSources.WORK_SPECIFICATION));
        items.add(gauge());
        items.add(compare());
        items.add(new ChecklistItem(
                named("look at what comes out of the gas valve, and soap it afterwards."),
                "Water: the membrane is torn, replace the vessel. Only mist: check again after a day. Bubbles: the valve loses"
                        + " gas, replace its core.",
                CheckSources.JUDGEMENT));
        return items;
    }

    private String named(String text) {
        return "Vessel " + PlainText.shortened(vessel.id()) + ": " + text;
    }

    private ChecklistItem isolate() {
        Boolean valve = vessel.lockableValve();
        if (valve == null) {
            return new ChecklistItem(
                    named(
                            "look whether a valve that can be locked open and a drain part it from the loop, and record it."),
                    "The record does not say; with one, the charge can be checked without draining the loop.",
                    CheckSources.TRADE_BODY);
        }
        return valve
                ? new ChecklistItem(
                        named("close its lockable valve. At the end open it again and lock it open."),
                        "A vessel that stays shut off protects nothing.",
                        CheckSources.TRADE_BODY)
                : new ChecklistItem(
                        named(
                                "no lockable valve: shut the valves of the loop around it, with generators and pumps stopped, or bring the"
                                        + " loop to zero pressure. Keep it short."),
                        "A loop without its vessel cools and may draw in air. Plan a lockable valve with a drain.",
                        CheckSources.TRADE_BODY);
    }

    private ChecklistItem gauge() {
        ChargeNote charge = vessel.charge();
        GaugeNote used = charge == null ? null : charge.gauge();
        String which = used == null || used.identity() == null
                ? "note which gauge is used, with its range and class."
                : "use the gauge of the record if it is at hand: " + PlainText.shortened(used.identity()) + ".";
        String range = used == null || used.fullScale() == null
                ? ""
                : " The recorded one ends at " + used.fullScale().textInBothSystems() + ".";
        return new ChecklistItem(
                named("take a gauge of low range; " + which),
                "The error of a gauge goes with its range: a coarse one hides the loss of years." + range,
                CheckSources.JUDGEMENT);
    }

    private ChecklistItem compare() {
        ChargeHistory.Setting set = ChargeHistory.of(book, vessel.id(), ambient).lastSet();
        if (set == null) {
            return new ChecklistItem(
                    named("read the charge and the temperature of the shell, set the charge and record all three."),
                    "No charge is recorded: work it out from static head and fill pressure, not from the value it was delivered with.",
                    CheckSources.TRADE_BODY);
        }
        String recorded = "recorded on " + set.date() + ": " + set.charge().textInBothSystems();
        Temperature gas = set.gas();
        if (gas == null) {
            return new ChecklistItem(
                    named(
                            "read the charge and compare: " + recorded
                                    + ", at a gas temperature that is not recorded. Record the temperature of the shell this time."),
                    "Without its temperature a charge can be compared only roughly.",
                    ChargeCorrection.SOURCE);
        }
        String today = gasToday == null
                ? "; at 20 degC that is " + text(set.charge(), gas, ChargeCorrection.REFERENCE)
                        + ". Correct the reading for the temperature of the shell."
                : "; with the gas at " + gasToday.textInBothSystems() + " as today that is "
                        + text(set.charge(), gas, gasToday) + ".";
        return new ChecklistItem(
                named("read the charge and compare: " + recorded + " with the gas at " + gas.textInBothSystems()
                        + today),
                "A lower reading is lost gas: find the leak, top up with dry nitrogen or air, never oxygen, and record it as left.",
                ChargeCorrection.SOURCE);
    }

    private String text(GaugePressure charge, Temperature read, Temperature wanted) {
        return ChargeCorrection.at(charge, read, wanted, ambient).textInBothSystems();
    }
}
