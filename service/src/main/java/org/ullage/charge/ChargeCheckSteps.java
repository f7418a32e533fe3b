package org.ullage.charge;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/**
 * How the charge of a vessel is checked: with the water side parted from the loop and drained to zero pressure, because a gas valve on a
 * vessel that still holds water shows the pressure of the loop whatever the charge is; see {@link UndrainedReading}. Immutable.
 *
 * @param connection how the vessel can be parted from its loop
 */
public record ChargeCheckSteps(VesselConnection connection) implements Serializable {

    private static final Source TRADE_BODY =
            Source.published("Belgian trade body, how to check a closed vessel", "first part");

    private static final Source WORK_SPECIFICATION = Source.published(
            "US standard work specification 7.8104.8", "given for potable tanks: isolate, drain, read, match");

    private static final Source BOILER_INSTRUCTIONS =
            Source.published("boiler service instructions (European)", "charge of the vessel and cold fill");

    private static final Source PRACTICE = Source.commonPractice("work on expansion vessels");

    private static final Source OF_CHARGE =
            Source.computed("gas law of the vessel", "charge on the empty vessel, then fill, vent, heat, vent, top up");

    private static final CheckStep NOTE = new CheckStep(
            "Note the reading of the loop's gauge, the height between gauge and vessel, and the temperatures of loop and vessel.",
            PRACTICE);

    private static final CheckStep STOP =
            new CheckStep("Stop heat generators and pumps and let the loop cool.", TRADE_BODY);

    private static final List<CheckStep> BY_VALVE = List.of(
            new CheckStep("Unlock and close the valve between loop and vessel.", TRADE_BODY),
            new CheckStep(
                    "Open the drain on the vessel's side until no more water comes and the water side is at zero pressure; leave it open.",
                    WORK_SPECIFICATION));

    private static final List<CheckStep> BY_TAKING_OFF = List.of(
            new CheckStep(
                    "Close the loop's own valves on both sides of the vessel; where there are none, drain the loop to below the"
                            + " vessel.",
                    TRADE_BODY),
            new CheckStep(
                    "Let the pressure off at a drain, support the vessel, and take it off or open its connection so that the water"
                            + " side is empty and open to the air.",
                    TRADE_BODY),
            new CheckStep(
                    "Keep it short: the loop cools meanwhile, its pressure falls, and it may draw in air.",
                    TRADE_BODY));

    private static final List<CheckStep> READ = List.of(
            new CheckStep(
                    "Read the gas valve with a low-range gauge, and the temperature of the vessel.",
                    WORK_SPECIFICATION),
            new CheckStep(
                    "If the reading equals the loop's gauge corrected for height, the water side was not empty: the test was done"
                            + " wrongly, drain and read again.",
                    PRACTICE),
            new CheckStep(
                    "Set the charge that is wanted at this temperature: add dry nitrogen or air through a regulator, or bleed."
                            + " If water comes out of the gas valve, the membrane is torn.",
                    WORK_SPECIFICATION),
            new CheckStep("Read again, look for leaks at the gas valve, and put its cap on.", PRACTICE));

    private static final CheckStep REOPEN =
            new CheckStep("Close the drain, open the valve slowly, and lock it open.", TRADE_BODY);

    private static final CheckStep PUT_BACK =
            new CheckStep("Put the vessel back and open the loop's valves.", TRADE_BODY);

    private static final List<CheckStep> FILL = List.of(
            new CheckStep(
                    "Fill to the pressure of the plan, not below the charge (one boiler instruction: 0.2 bar above it), and mark it on"
                            + " the gauge as the least.",
                    BOILER_INSTRUCTIONS),
            new CheckStep(
                    "Vent; heat up once to the highest temperature; vent again; top up; check that the hot pressure stays below the"
                            + " margin of the relief valve.",
                    OF_CHARGE),
            new CheckStep(
                    "Write down charge, temperature, fill and date. Check again within a year, at the latest two.",
                    TRADE_BODY));

    /**
     * The steps in their order.
     *
     * @return what to do
     */
    public List<CheckStep> steps() {
        boolean byValve = connection == VesselConnection.LOCKABLE_VALVE_WITH_DRAIN;
        List<CheckStep> steps = new ArrayList<>(List.of(NOTE, STOP));
        steps.addAll(byValve ? BY_VALVE : BY_TAKING_OFF);
        steps.addAll(READ);
        steps.add(byValve ? REOPEN : PUT_BACK);
        steps.addAll(FILL);
        return List.copyOf(steps);
    }

    /**
     * The dangers of the work, and where local codes and licensed practice decide.
     *
     * @return the cautions, never empty
     */
    public List<Caution> cautions() {
        return ChargeCautions.ofCheck();
    }

    /**
     * Cautions and numbered steps for people.
     *
     * @return several lines, each ended by a line feed
     */
    public String text() {
        StringBuilder text = new StringBuilder("Check of the charge, " + connection + "\n");
        cautions().forEach(caution -> text.append("! ").append(caution.text()).append('\n'));
        List<CheckStep> steps = steps();
        for (int i = 0; i < steps.size(); i++) {
            text.append(i + 1).append(". ").append(steps.get(i).text()).append('\n');
        }
        return text.toString();
    }
}
