package org.ullage.sharing;

import java.util.List;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.uncertainty.SizingUncertainty;

/** How sure a sizing is, with a fixed seed. */
final class UncertaintyAskings {

    private static final int DRAWS = 20_000;
    private static final long SEED = 1150;

    private UncertaintyAskings() {}

    static List<Asking> all() {
        SizingUncertainty question = QuillbrookYard.UNCERTAIN;
        return List.of(
                new Asking("question", () -> question),
                new Asking("centre", question::centre),
                new Asking("by propagation", question::linear),
                new Asking("by drawing", () -> question.sampled(DRAWS, SEED)),
                new Asking("text", () -> question.sampled(DRAWS, SEED).text(UnitSystem.SI)),
                new Asking("chance of a lift", () -> question.liftChance(Volume.litres(140), DRAWS, SEED)));
    }
}
