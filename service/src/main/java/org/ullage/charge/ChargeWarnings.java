package org.ullage.charge;

import java.util.ArrayList;
import java.util.List;
import org.ullage.method.Sizing;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/** What the reader of a charge plan must know about it. */
final class ChargeWarnings {

    private static final Source PLAN = Source.computed("charge plan", "pressures and volumes against their limits");

    private static final Source PRACTICE = Source.commonPractice("charging of expansion vessels");

    private final ChargeNumbers numbers;
    private final Sizing sizing;
    private final List<Caution> warnings = new ArrayList<>();

    private ChargeWarnings(ChargeNumbers numbers) {
        this.numbers = numbers;
        this.sizing = numbers.job.sizing();
    }

    static List<Caution> of(ChargeNumbers numbers) {
        ChargeWarnings warnings = new ChargeWarnings(numbers);
        warnings.charge();
        warnings.fill();
        warnings.hot();
        return List.copyOf(warnings.warnings);
    }

    private void say(boolean holds, String text, Source source) {
        if (holds) {
            warnings.add(new Caution(text, source));
        }
    }

    private void charge() {
        say(
                numbers.toSet.pressure().si() <= 0,
                "The charge to set is not above the air pressure: a gauge cannot show that it is there.",
                PLAN);
        say(
                sizing.job().vessel().kind() == VesselKind.PLAIN_STEEL,
                "A plain tank has no membrane: its charge can only be set with the tank drained, and air dissolves in the water"
                        + " as it works.",
                PRACTICE);
        say(
                numbers.job.chargedUnder() != null && sizing.job().pressures().atmosphere() == null,
                "The air pressure of the site was not given to the sizing, which took the method's, "
                        + sizing.atmosphere().textInBothSystems()
                        + ": the charge to set counts from there.",
                PLAN);
    }

    private void fill() {
        say(
                !numbers.window.window().isOpen(),
                "The vessel is too small for this filling: no fill pressure keeps the reserve and takes the expansion.",
                PLAN);
        say(
                GasLaw.isAbove(numbers.fillCharge.si(), numbers.fill.si()),
                "The fill pressure is below the charge: the vessel stays empty and the pressure falls at once when the loop"
                        + " shrinks.",
                PLAN);
        say(
                GasLaw.isAbove(numbers.window.window().lowest().si(), numbers.fill.si()),
                "The fill pressure is below the lowest, "
                        + numbers.window.lowest().textInBothSystems() + ": the reserve is not kept.",
                PLAN);
        say(
                GasLaw.isAbove(
                        numbers.fill.si(), numbers.window.window().highest().si()),
                "The fill pressure is above the highest, "
                        + numbers.window.highest().textInBothSystems()
                        + ": the final pressure is passed before the loop is hot.",
                PLAN);
    }

    private void hot() {
        GaugePressure setting = sizing.job().pressures().reliefSetting();
        say(
                setting != null
                        && GasLaw.isAbove(numbers.hot.si(), atVessel(setting).si()),
                "With the loop hot the relief valve lifts.",
                PLAN);
        VolumeFraction limit = sizing.job().vessel().acceptanceLimit();
        Volume water = numbers.water.plus(numbers.window.expansion());
        say(
                limit == null,
                "The acceptance limit of the vessel is not known: check that it takes " + water.textInBothSystems()
                        + ".",
                PLAN);
        say(
                limit != null
                        && GasLaw.isAbove(
                                water.si(), limit.si() * numbers.job.nominal().si()),
                "With the loop hot the vessel must hold " + water.textInBothSystems()
                        + ", more than its acceptance limit.",
                PLAN);
    }

    /** The setting as it stands at the vessel, absolute. */
    private AbsolutePressure atVessel(GaugePressure setting) {
        double place = sizing.job().pressures().place().valveToVesselPascals();
        return AbsolutePressure.ofSi(setting.si() + place + sizing.atmosphere().si());
    }
}
