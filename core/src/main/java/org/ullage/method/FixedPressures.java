package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.StaticHead;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.workings.Caution;

/**
 * A rule that is a table answers for its own pressures only. A loop that asks for more cold pressure or allows less final pressure is
 * refused, because the table would be too small for it; a loop that is easier gets the table's answer with a warning.
 */
final class FixedPressures {

    private static final Source ROUNDING = Source.computed("unit conversion", "12 psi written as 0.83 bar");

    private static final PressureDifference SLACK =
            PressureDifference.psi(new Constant("dp", 0.1, "psi", ROUNDING).value());

    private static final String REMEDY = "take a method that follows the loop's own pressures";

    private FixedPressures() {}

    static void requireCold(GaugePressure fixed, PressureInputs given, Method method) {
        GaugePressure needed = coldNeeded(given);
        if (needed != null && needed.si() > fixed.si() + SLACK.si()) {
            throw new OutOfRangeException(
                    "cold pressure",
                    needed.textInBothSystems(),
                    "at or below " + fixed.textInBothSystems() + ", for which this rule was made (" + method.title()
                            + ")",
                    REMEDY);
        }
    }

    static void requireFinal(GaugePressure fixed, PressureInputs given, Method method) {
        GaugePressure allowed = finalAllowed(given);
        if (allowed != null && allowed.si() < fixed.si() - SLACK.si()) {
            throw new OutOfRangeException(
                    "final pressure",
                    allowed.textInBothSystems(),
                    "at or above " + fixed.textInBothSystems() + ", for which this rule was made (" + method.title()
                            + ")",
                    REMEDY);
        }
    }

    static List<Caution> warnings(Method method, PressureInputs given) {
        List<Caution> warnings = new ArrayList<>();
        GaugePressure cold = method.coldPressure().fixed();
        GaugePressure stated = given.coldPressure();
        if (cold != null && stated != null && stated.si() < cold.si() - SLACK.si()) {
            warnings.add(
                    notUsed("cold pressure", stated, cold, method.coldPressure().source()));
        }
        GaugePressure last = method.finalPressure().fixed();
        GaugePressure allowed = finalAllowed(given);
        if (last != null && allowed != null && allowed.si() > last.si() + SLACK.si()) {
            warnings.add(notUsed(
                    "final pressure", allowed, last, method.finalPressure().source()));
        }
        return warnings;
    }

    private static Caution notUsed(String which, GaugePressure loops, GaugePressure rules, Source source) {
        return new Caution(
                "This rule was made for a " + which + " of " + rules.textInBothSystems() + ": the loop's "
                        + loops.textInBothSystems() + " was not used, and a smaller vessel may do.",
                source);
    }

    /** What the loop needs at the vessel when cold: as stated, or enough to reach its top with the pump running. */
    private static @Nullable GaugePressure coldNeeded(PressureInputs given) {
        Length head = given.staticHead();
        GaugePressure stated = given.coldPressure();
        if (stated != null || head == null) {
            return stated;
        }
        double top = StaticHead.of(head).si() + given.place().coldRaisePascals();
        return GaugePressure.ofSi(Math.max(0, top));
    }

    /** What the loop allows at the vessel when hot: the lowest of stated pressure, relief setting and weakest part. */
    private static @Nullable GaugePressure finalAllowed(PressureInputs given) {
        double allowed = PressureArithmetic.weakestLimit(given.place());
        GaugePressure stated = given.finalPressure();
        GaugePressure setting = given.reliefSetting();
        if (stated != null) {
            allowed = Math.min(allowed, stated.si());
        }
        if (setting != null) {
            allowed = Math.min(allowed, setting.si() + given.place().valveToVesselPascals());
        }
        return allowed == Double.POSITIVE_INFINITY ? null : GaugePressure.ofSi(allowed);
    }
}
