package org.ullage.reference;

import java.util.Optional;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** The example of this module's README, to the letter. */
final class ReadmeExample {

    private ReadmeExample() {}

    static ReferenceReport check() {
        // README
        ImplementationUnderTest ours = question -> {
            boolean closedVessel = question.asked() == Asked.REQUIRED_VOLUME && question.has(Input.WATER);
            if (!closedVessel || question.has(Input.PRECHARGE)) {
                return Optional.empty();
            }
            double water = question.volume(Input.WATER).in(Units.LITRE);
            double cold = question.absolutePressure(Input.COLD_PRESSURE).in(Units.BAR);
            double hot = question.absolutePressure(Input.FINAL_PRESSURE).in(Units.BAR);
            if (cold >= hot) {
                throw new IllegalArgumentException("the final pressure must be above the cold one");
            }
            return Optional.of(Answer.of(Volume.litres(water / (1 - cold / hot))));
        };
        ReferenceReport report = ReferenceRun.of(ours);
        System.out.print(TextReport.of(report));
        // README
        return report;
    }
}
