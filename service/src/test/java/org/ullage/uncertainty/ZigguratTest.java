package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class ZigguratTest {

    /** A wrong digit in the place of the tail leaves a gap. */
    @Test
    void layersCloseAtTheTop() {
        assertThat(Ziggurat.gapAtTop()).isCloseTo(0, within(1e-12));
    }

    /** Every part of the density, the tail beyond 3.654 with it, to four standard errors of its count. */
    @Test
    void countsFollowTheNormalDistribution() {
        int many = 20_000_000;
        double[] ends = {-3.7, -3, -2, -1, -0.3, 0, 0.1, 0.5, 1.5, 2.5, 3.5, 3.66, 4};
        int[] below = new int[ends.length];
        SplittableRandom random = new SplittableRandom(20_261_125);
        for (int i = 0; i < many; i++) {
            double draw = Ziggurat.normal(random);
            for (int j = 0; j < ends.length; j++) {
                below[j] += draw < ends[j] ? 1 : 0;
            }
        }
        NormalDistribution normal = new NormalDistribution(0, 1);
        for (int j = 0; j < ends.length; j++) {
            double p = normal.cumulativeProbability(ends[j]);
            assertThat(below[j]).as("below %s", ends[j]).isCloseTo((int) (p * many), within((int)
                    (4 * Math.sqrt(many * p * (1 - p)))));
        }
    }

    @Test
    void aSeedGivesTheSameBitsAnywhere() {
        SplittableRandom random = new SplittableRandom(42);
        assertThat(Ziggurat.normal(random)).isEqualTo(-0.7207291127938285);
        assertThat(Ziggurat.normal(random)).isEqualTo(1.061883279671703);
        assertThat(Ziggurat.normal(random)).isEqualTo(1.0420088589399672);
    }
}
