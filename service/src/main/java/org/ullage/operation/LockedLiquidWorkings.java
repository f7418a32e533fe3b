package org.ullage.operation;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Derives the steps of {@link LockedLiquid} on demand, from the same numbers. */
final class LockedLiquidWorkings {

    private LockedLiquidWorkings() {}

    static Workings of(LockedLiquid liquid) {
        Source fluid = liquid.fluid().source();
        List<Step> steps = new ArrayList<>();
        Term alpha = Term.number("alpha_v", liquid.expansionSi());
        Term chi = Term.number("chi", liquid.compressibilitySi());
        steps.add(Step.given("expansion of the liquid, 1/K", alpha, "difference of specific volumes", fluid));
        steps.add(Step.given("compressibility of the liquid, 1/Pa", chi, "difference of specific volumes", fluid));
        Term slope = Term.number("S", liquid.slopeSi());
        PipeWall wall = liquid.wall();
        if (wall == null) {
            steps.add(new Step(
                    "slope in a rigid container, Pa/K",
                    "alpha_v / chi",
                    List.of(alpha, chi),
                    slope,
                    PipeWall.BLOCKED_IN));
        } else {
            Term stretch = Term.number("k", wall.stretchSi());
            steps.add(stretch(wall, stretch));
            steps.add(new Step(
                    "slope in the pipe, Pa/K",
                    "(alpha_v - 3 * alpha_l) / (chi + k)",
                    List.of(alpha, Term.of("alpha_l", wall.material().linearExpansion()), chi, stretch),
                    slope,
                    PipeWall.BLOCKED_IN));
        }
        return new Workings(
                "Locked " + liquid.fluid().name() + " at "
                        + liquid.temperature().text(UnitSystem.SI),
                steps);
    }

    private static Step stretch(PipeWall wall, Term stretch) {
        return new Step(
                "stretch of the wall of " + wall.material().name() + ", 1/Pa",
                "d / (2 * E * w) * (2.5 - 2 * nu)",
                List.of(
                        Term.of("d", wall.bore()),
                        Term.of("E", wall.material().modulus()),
                        Term.of("w", wall.thickness()),
                        Term.number("nu", wall.material().poisson())),
                stretch,
                wall.material().source());
    }
}
