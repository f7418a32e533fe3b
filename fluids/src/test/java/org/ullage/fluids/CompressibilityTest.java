package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.loop.LoopFluid;

/** A fluid must not claim that the pressure does not matter where it does: others ask it only once then. */
class CompressibilityTest {

    private static final List<Double> PASCALS = List.of(1e5, 2e5, 5e5, 1e6);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "water/if97",
                "water/kell",
                "water/table",
                "propylene glycol 30 vol%/ashrae",
                "ethylene glycol 40 vol%/ashrae",
                "propylene glycol 30 vol%/melinder",
                "ethylene glycol 40 mass%/conde",
                "propylene glycol 30 vol%/ideal"
            })
    void saysWhetherThePressureMatters(String text) {
        LoopFluid fluid = Fluids.parse(text);
        for (double kelvins = 290; kelvins < 360; kelvins += 7) {
            double at = kelvins;
            long different = PASCALS.stream()
                    .map(pascals -> fluid.specificVolumeSi(at, pascals))
                    .distinct()
                    .count();
            assertThat(different).isEqualTo(fluid.isCompressible() ? PASCALS.size() : 1);
        }
    }
}
