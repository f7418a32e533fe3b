package org.ullage.operation;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/** What must be said with a curve: what it assumes, and what it does not replace. */
final class OperatingCautions {

    private static final Source ASSUMED = Source.computed("mass balance", "what it leaves out");
    private static final Source USUAL_CARE = Source.commonPractice("usual care on pressurised loops");

    private OperatingCautions() {}

    static List<Caution> of(OperatingCurve curve) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "A pressure that changes with temperature alone is no sign of failure; every closed loop does it.",
                ASSUMED));
        cautions.add(new Caution(
                "Counted with gas that keeps its temperature, no make-up, no loss and the pump off; "
                        + curve.inUse().vesselWater().text(UnitSystem.SI) + ".",
                ASSUMED));
        if (curve.inUse().loop().pipe() == null) {
            cautions.add(new Caution(
                    "The pipe material is not stated: the pipe is taken not to grow, which gives the higher pressure hot and the"
                            + " lower one cold.",
                    ASSUMED));
        }
        double known = curve.inUse().bank().absolute(curve.inUse().known().pressure());
        if (known < curve.numbers().bank().floor()) {
            cautions.add(new Caution(
                    "The loop was left below the lowest charge: the vessels hold no water, and the next cooling draws the"
                            + " loop's pressure away.",
                    ASSUMED));
        }
        cautions.add(new Caution(
                "This is arithmetic, not a protection: the relief valve stays, open to the boiler, and codes, instructions and"
                        + " a licensed person decide on site. Hot water under pressure scalds.",
                USUAL_CARE));
        return List.copyOf(cautions);
    }
}
