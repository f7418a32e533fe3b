package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Units;

class QuestionTest {

    private final Question question = Question.of(
            Asked.REQUIRED_VOLUME,
            "contents=3000 gal; cold=40 degF; cold_pressure=10 psi; final_pressure=39.7 psi abs; atmosphere=14.7 psi abs;"
                    + "static_head=30 ft; top_margin=4 psi; mass=2 lb; hot_specific_volume=0.01677 ft3/lb");

    @Test
    void givesInputsInAnyUnit() {
        assertThat(question.volume(Input.CONTENTS).in(Units.LITRE)).isEqualTo(11356.235, Offset.offset(0.001));
        assertThat(question.temperature(Input.COLD).in(Units.CELSIUS)).isEqualTo(4.444, Offset.offset(0.001));
        assertThat(question.length(Input.STATIC_HEAD).in(Units.METRE)).isEqualTo(9.144, Offset.offset(1e-9));
        assertThat(question.pressureDifference(Input.TOP_MARGIN).in(Units.PSI)).isEqualTo(4);
        assertThat(question.mass(Input.MASS).in(Units.POUND)).isEqualTo(2);
        assertThat(question.specificVolume(Input.HOT_SPECIFIC_VOLUME).in(Units.CUBIC_FOOT_PER_POUND))
                .isEqualTo(0.01677);
    }

    @Test
    void convertsBetweenGaugeAndAbsolute() {
        Offset<Double> exact = Offset.offset(1e-12);
        assertThat(question.gaugePressure(Input.COLD_PRESSURE).in(Units.PSI)).isEqualTo(10, exact);
        assertThat(question.absolutePressure(Input.COLD_PRESSURE).in(Units.PSI)).isEqualTo(24.7, exact);
        assertThat(question.gaugePressure(Input.FINAL_PRESSURE).in(Units.PSI)).isEqualTo(25, exact);
        assertThat(question.absolutePressure(Input.FINAL_PRESSURE).in(Units.PSI))
                .isEqualTo(39.7, exact);
    }

    @Test
    void airIsStandardUnlessGiven() {
        assertThat(question.atmosphere().in(Units.PSI)).isEqualTo(14.7);
        Question without = Question.of(Asked.REQUIRED_VOLUME, "cold_pressure=1 bar");
        assertThat(without.absolutePressure(Input.COLD_PRESSURE).in(Units.BAR))
                .isEqualTo(2.01325, Offset.offset(1e-12));
    }

    @Test
    void namesAMissingInput() {
        assertThat(question.has(Input.HOT)).isFalse();
        assertThatThrownBy(() -> question.temperature(Input.HOT))
                .isInstanceOf(MissingInputException.class)
                .hasMessageStartingWith("hot is missing: the question for required volume needs it");
    }

    @Test
    void readsNumbersAndOtherKinds() {
        Question beam = Question.of(Asked.BEAM_LOAD, "importance=1.5; elasticity=29.5e6 psi");
        assertThat(beam.number(Input.IMPORTANCE)).isEqualTo(1.5);
        assertThat(beam.read(Input.ELASTICITY, Stress::parse)).isEqualTo(Stress.psi(29.5e6));
        assertThatThrownBy(() -> beam.number(Input.ELASTICITY)).isInstanceOf(NumberFormatException.class);
    }

    @Test
    void withExchangesOneInputInACopy() {
        assertThat(question.with(Input.COLD, "50 degF").text(Input.COLD)).isEqualTo("50 degF");
        assertThat(question.text(Input.COLD)).isEqualTo("40 degF");
    }
}
