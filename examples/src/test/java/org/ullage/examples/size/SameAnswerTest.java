package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.examples.Program;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** The same loop, written in different ways, gets the same vessel. */
class SameAnswerTest {

    /** Answers are printed with six significant digits. */
    private static final double PRINTED = 1e-5;

    private static final String IP = "a,ashrae,%s,water,3000 gal,40 degF,220 degF,steel,10 psi,25 psi,,,,";

    private static double litres(Map<String, String> row) {
        assertThat(row).containsEntry("error", "");
        return Volume.parse(row.get("required_volume")).in(Units.LITRE);
    }

    private static double litres(String line) {
        return litres(Program.sizeLines(line).row());
    }

    /** ASHRAE Handbook, HVAC Systems and Equipment, hydronic chapter: remembered example, not checked against the book. */
    @ParameterizedTest
    @CsvSource({"diaphragm,344", "plain-steel,578"})
    void meetsTheRememberedHandbookExample(String vessel, double gallons) {
        Map<String, String> row = Program.sizeLines(String.format(IP, vessel)).row();

        assertThat(Volume.parse(row.get("required_volume")).in(Units.US_GALLON))
                .isCloseTo(gallons, within(gallons * 0.005));
    }

    /** The SI line holds the exact conversions: 231 in3, 5/9 K, 6894.757... Pa. */
    @ParameterizedTest
    @CsvSource({"diaphragm", "plain-steel"})
    void inEitherUnitSystem(String vessel) {
        String metric = "a,ashrae," + vessel + ",water,11.356235352 m3,277.59444444444 K,104.44444444444 degC,steel,"
                + "68.947572931684 kPa,1.7236893232921 bar,,,,";

        assertThat(litres(metric)).isCloseTo(litres(String.format(IP, vessel)), within(1300 * PRINTED));
    }

    @Test
    void withGaugeOrAbsolutePressures() {
        String gauge = "a,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,1.2 bar,2.7 bar,,3 bar,0.9 bar,95 kPa";
        String absolute = "a,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,2.15 bar abs,3.65 bar abs,,3.95 bar abs,"
                + "1.85 bar abs,95 kPa";

        assertThat(Program.sizeLines(absolute).out())
                .isEqualTo(Program.sizeLines(gauge).out());
    }

    @Test
    void aPressureIsNotAboveItselfWrittenInAnotherWay() {
        String line = "a,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,%s,%s,,%s,%s,14.7 psi abs";
        String gauge = String.format(line, "12 psi", "30 psi", "30 psi", "12 psi");

        assertThat(Program.sizeLines(gauge).status()).isZero();
        assertThat(Program.sizeLines(String.format(line, "26.7 psi abs", "44.7 psi abs", "30 psi", "12 psi"))
                        .out())
                .isEqualTo(Program.sizeLines(gauge).out());
        assertThat(Program.sizeLines(String.format(line, "12 psi", "30 psi", "44.7 psi abs", "26.7 psi abs"))
                        .out())
                .isEqualTo(Program.sizeLines(gauge).out());
    }

    @Test
    void withoutAnAtmosphereAbsolutePressuresCountFromTheStandardOne() {
        String gauge = "a,raccolta-r,bladder,water,1000 L,,80 degC,,1 bar,3 bar,,,,";
        String absolute = "a,raccolta-r,bladder,water,1000 L,,80 degC,,2.01325 bar abs,4.01325 bar abs,,,,";

        assertThat(Program.sizeLines(absolute).out())
                .isEqualTo(Program.sizeLines(gauge).out());
    }

    @ParameterizedTest
    @CsvSource({"101.325 kPa", "101.325 kPa abs", "1.01325 bar", "0 m", "0 ft", "1013.25 mbar abs"})
    void withTheDefaultAtmosphereWrittenOut(String atmosphere) {
        for (String method : new String[] {"ashrae", "en-12828", "raccolta-r", "asme-iv"}) {
            String line = "a," + method + ",bladder,water,1000 L,10 degC,80 degC,,,,10 m,3 bar,,";
            assertThat(Program.sizeLines(line + atmosphere).out())
                    .isEqualTo(Program.sizeLines(line).out());
        }
    }

    @ParameterizedTest
    @CsvSource({"1500 m,84.556 kPa", "5000 ft,12.2277 psi abs"})
    void withAnAltitudeOrItsPressure(String altitude, String pressure) {
        String line = "a,ashrae,bladder,water,1000 L,10 degC,80 degC,,,,10 m,3 bar,,";

        assertThat(litres(line + altitude)).isCloseTo(litres(line + pressure), within(1e-3));
        assertThat(litres(line + altitude)).isNotCloseTo(litres(line), within(1.0));
    }

    @Test
    void anAltitudeDoesNotChangeAGaugePressure() {
        Map<String, String> row = Program.sizeLines(
                        "a,ashrae,bladder,water,1000 L,10 degC,80 degC,,1 bar,2.5 bar,,,,1500 m")
                .row();

        assertThat(GaugePressure.parse(row.get("cold_pressure"))).isEqualTo(GaugePressure.bar(1));
    }
}
