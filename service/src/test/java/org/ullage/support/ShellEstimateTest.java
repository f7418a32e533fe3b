package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

class ShellEstimateTest {

    private static ShellEstimate estimate(double litres, double bar) {
        return new ShellEstimate(Volume.litres(litres), GaugePressure.bar(bar));
    }

    @Test
    void diameterGivesTheVolumeBack() {
        double d = estimate(300, 6).diameter().si();
        double cylinder = Math.PI / 4 * d * d * 1.1 * d;
        double heads = 4.0 / 3 * Math.PI * (d / 2) * (d / 2) * (d / 4);
        assertThat((cylinder + heads) * 1000).isCloseTo(300, within(1e-9));
    }

    /** The surface of the two heads by cutting the ellipse into many cones. */
    @Test
    void massIsSurfaceTimesWallTimesDensity() {
        ShellEstimate shell = estimate(1000, 10);
        double a = shell.diameter().si() / 2;
        double heads = 0;
        int cuts = 20_000;
        for (int i = 0; i < cuts; i++) {
            double from = Math.PI * i / cuts;
            double to = Math.PI * (i + 1) / cuts;
            double slant = Math.hypot(a * (Math.sin(to) - Math.sin(from)), a / 2 * (Math.cos(to) - Math.cos(from)));
            heads += Math.PI * a * (Math.sin(from) + Math.sin(to)) * slant;
        }
        double surface = Math.PI * 2 * a * 1.1 * 2 * a + heads;
        assertThat(shell.mass().si()).isCloseTo(surface * shell.wall().si() * 7850, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"24, 1.2", "24.1, 1.5", "80, 1.5", "80.1, 2", "200, 2", "200.1, 3", "2000, 3"})
    void stepsOfTheHandlingWall(double litres, double millimetres) {
        assertThat(estimate(litres, 0.1).wall().si() * 1000).isCloseTo(millimetres, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1.9, 3", "2001, 3", "100, 0", "100, -1", "100, 25.1"})
    void outsideTheEstimateThePlateIsNeeded(double litres, double bar) {
        assertThatThrownBy(() -> estimate(litres, bar))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("plate");
    }

    @ParameterizedTest
    @CsvSource({"2, 3", "2000, 3", "100, 25"})
    void theEndsOfTheEstimateBelongToIt(double litres, double bar) {
        assertThat(estimate(litres, bar).mass().si()).isPositive();
    }

    @Test
    void textAndWorkings() {
        assertThat(estimate(80, 10).text(UnitSystem.SI))
                .isEqualTo(
                        "bare shell of a 80 L vessel rated 10 bar: about 14.26 kg (estimate: diameter 414.2 mm, wall 1.883 mm)");
        assertThat(estimate(80, 10).text(UnitSystem.IP)).contains("about 31.44 lb", "in,");
        assertThat(estimate(80, 10).workings().text(UnitSystem.SI))
                .contains("max(1.5 mm, 10 bar * 414.", "[COMMON_PRACTICE]");
    }
}
