package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

class SeismicForceTest {

    private static final Mass MASS = Mass.kilograms(100);

    private static SeismicForce vessel(double motion, double height, double importance) {
        return new SeismicForce(Asce705To716.vessel(height), MASS, motion, importance);
    }

    /** By hand from the form of ASCE 7-05 to 7-16 with a_p = 1.0, R_p = 2.5. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0, 1, 0.15, LOWER_BOUND",
        "0.5, 0.5, 1.5, 0.24, FORMULA",
        "0.5, 1, 1, 0.24, FORMULA",
        "0.5, 1, 1.5, 0.36, FORMULA",
        "1, 0, 1, 0.3, LOWER_BOUND",
        "1, 0, 1.5, 0.45, LOWER_BOUND",
        "1, 0.5, 1, 0.32, FORMULA",
        "1, 0.5, 1.5, 0.48, FORMULA",
        "1, 1, 1, 0.48, FORMULA",
        "1, 1, 1.5, 0.72, FORMULA",
        "1.5, 0, 1.5, 0.675, LOWER_BOUND",
        "1.5, 0.5, 1, 0.48, FORMULA",
        "1.5, 0.5, 1.5, 0.72, FORMULA",
        "1.5, 1, 1, 0.72, FORMULA",
        "1.5, 1, 1.5, 1.08, FORMULA",
    })
    void coefficients(
            double motion, double height, double importance, double coefficient, SeismicForce.Governing governing) {
        SeismicForce force = vessel(motion, height, importance);
        assertThat(force.coefficient()).isCloseTo(coefficient, within(1e-12));
        assertThat(force.governing()).isEqualTo(governing);
        assertThat(force.force().si()).isCloseTo(coefficient * 980.665, within(1e-9));
    }

    @Test
    void isolatorsReachTheUpperBound() {
        SeismicForce isolated = new SeismicForce(Asce705To716.vesselOnIsolators(1), MASS, 1, 1);
        assertThat(isolated.coefficient()).isCloseTo(1.2, within(1e-12));
        SeismicForce soft = new SeismicForce(new Asce705To716(2.5, 1.5, 1), MASS, 1, 1);
        assertThat(soft.coefficient()).isCloseTo(1.6, within(1e-12));
        assertThat(soft.governing()).isEqualTo(SeismicForce.Governing.UPPER_BOUND);
        SeismicForce vital = new SeismicForce(new Asce705To716(2.5, 1.5, 1), MASS, 1.25, 1.5);
        assertThat(vital.coefficient()).isCloseTo(1.6 * 1.25 * 1.5, within(1e-12));
    }

    /** 0.4 x 1.0 x 1.5 x (3.5 / 1.3) (1.4 / 1.5) = 1.5077. */
    @Test
    void formOf2022() {
        SeismicForce force = new SeismicForce(new Asce722(3.5, 1.3, 1.4, 1.5), MASS, 1, 1.5);
        assertThat(force.coefficient()).isCloseTo(0.6 * 3.5 / 1.3 * 1.4 / 1.5, within(1e-12));
        assertThat(new SeismicForce(new Asce722(1, 1, 1, 1.5), MASS, 1, 1.5).coefficient())
                .isCloseTo(0.45, within(1e-12));
        assertThat(force.text(UnitSystem.SI)).contains("ASCE 7-22", "1.51 of the weight");
        assertThat(force.workings().text(UnitSystem.SI))
                .contains("H_f / R_mu * (C_AR / R_po)", "3.5 / 1.3 * (1.4 / 1.5)");
    }

    @Test
    void textAndWorkings() {
        assertThat(vessel(1, 1, 1.5).text(UnitSystem.SI))
                .isEqualTo("seismic force by ASCE 7-05 to 7-16: 706.1 N, 0.72 of the weight, decided by the formula");
        assertThat(vessel(1, 1, 1.5).workings().text(UnitSystem.IP))
                .contains("a_p * (1 + 2 * z_h) / R_p", "1 * (1 + 2 * 1) / 2.5", "min(2.4, max(0.45, 0.72))", "lbf");
        assertThat(vessel(1, 1, 1).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("adopted code"));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1", "1, -0.1, 1", "1, 1.1, 1", "1, 0, 1.2", "NaN, 0, 1", "1, NaN, 1", "Infinity, 0, 1"})
    void badInput(double motion, double height, double importance) {
        assertThatThrownBy(() -> vessel(motion, height, importance)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void badFactors() {
        assertThatThrownBy(() -> new SeismicForce(Asce705To716.vessel(0), Mass.kilograms(0), 1, 1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("waterlogged mass");
        assertThatThrownBy(() -> new Asce705To716(0.9, 2.5, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Asce705To716(1, 0.9, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Asce722(1, 1, 0, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Asce722(1, 0.9, 1, 1)).hasMessageContaining("R_mu");
        assertThatThrownBy(() -> new Asce722(1, 1, 1, 0.9)).hasMessageContaining("R_po");
        assertThatThrownBy(() -> new Asce722(Double.NaN, 1, 1, 1)).isInstanceOf(OutOfRangeException.class);
    }
}
