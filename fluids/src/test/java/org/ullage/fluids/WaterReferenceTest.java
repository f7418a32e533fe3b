package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Every row of the cited water tables. */
class WaterReferenceTest {

    /** Largest difference of IF97 from IAPWS-95 in the table of densities, which the fluids' users may rely on. */
    private static final double MOST_PPM = 16;

    /** Differences are printed to 0.1 ppm. */
    private static final double HALF_PPM_DIGIT = 0.051;

    static Stream<WaterReferenceTable.Row> densities() {
        return WaterReferenceTable.rows("water-density.tsv");
    }

    static Stream<WaterReferenceTable.Row> vapourPressures() {
        return WaterReferenceTable.rows("water-vapour-pressure.tsv");
    }

    static Stream<WaterReferenceTable.Row> kell() {
        return WaterReferenceTable.rows("water-kell-1975.tsv");
    }

    static Stream<WaterReferenceTable.Row> expansions() {
        return WaterReferenceTable.rows("water-expansion.tsv");
    }

    static Stream<WaterReferenceTable.Row> saturatedLiquid() {
        return WaterReferenceTable.rows("water-saturated-liquid.tsv");
    }

    @ParameterizedTest
    @MethodSource("densities")
    void densityMeetsIf97ToThePrintedDigitsAndIapws95ToTheStatedDifference(WaterReferenceTable.Row row) {
        double kelvins = kelvins(row.number("t_degC"));
        double pascals = row.text("p_kind").equals("sat")
                ? Water.IAPWS_IF97.vapourPressureSi(kelvins)
                : row.number("p_kPa_abs") * 1e3;
        double volume = Water.IAPWS_IF97.specificVolumeSi(kelvins, pascals);

        PrintedWaterValue.assertRoundsTo(row.printed("v_IF97_m3kg"), volume);
        PrintedWaterValue.assertRoundsTo(row.printed("rho_IF97_kgm3"), 1 / volume);
        double ppm = ppm(1 / volume, row.number("rho_IAPWS95_kgm3"));
        assertThat(ppm).isCloseTo(row.number("diff_ppm"), within(HALF_PPM_DIGIT));
        assertThat(Math.abs(ppm)).isLessThan(MOST_PPM);
    }

    @ParameterizedTest
    @MethodSource("vapourPressures")
    void vapourPressureMeetsIf97ToThePrintedDigitsAndIapws95ToTheStatedDifference(WaterReferenceTable.Row row) {
        double kilopascals = Water.IAPWS_IF97.vapourPressureSi(kelvins(row.number("t_degC"))) / 1e3;

        PrintedWaterValue.assertRoundsTo(row.printed("p_IF97_kPa"), kilopascals);
        // printed to 1 ppm, from pressures of as few as six digits
        assertThat(ppm(kilopascals, row.number("p_IAPWS95_kPa"))).isCloseTo(row.number("diff_ppm"), within(1.5));
    }

    @ParameterizedTest
    @MethodSource("kell")
    void kellMeetsItsCheckTable(WaterReferenceTable.Row row) {
        double kelvins = kelvins(row.number("t_degC"));
        double density = 1 / Water.KELL_1975.specificVolumeSi(kelvins, Units.STANDARD_ATMOSPHERE.value());
        double byIf97 = 1 / Iapws97.specificVolume(kelvins, Units.STANDARD_ATMOSPHERE.value());
        double saturated = 1 / Iapws97.specificVolume(kelvins, Iapws97.saturationPressure(kelvins));

        PrintedWaterValue.assertRoundsTo(row.printed("rho_Kell"), density);
        PrintedWaterValue.assertRoundsTo(row.printed("rho_IF97_1atm"), byIf97);
        PrintedWaterValue.assertRoundsTo(row.printed("rho_sat_IF97"), saturated);
        assertThat(ppm(density, byIf97)).isCloseTo(row.number("diff_ppm"), within(HALF_PPM_DIGIT));
    }

    @ParameterizedTest
    @MethodSource("expansions")
    void expansionMeetsItsTable(WaterReferenceTable.Row row) {
        double celsius = row.number("t_degC");
        double highPressure = 1e6;
        double usualPressure = 3e5;
        double usualOrBoiling = Math.max(usualPressure, Water.IAPWS_IF97.vapourPressureSi(kelvins(celsius)));

        double from4 = volume(celsius, highPressure) / volume(4, highPressure);
        PrintedWaterValue.assertRoundsTo(row.printed("ratio_v_over_v4_1000kPa"), from4);
        PrintedWaterValue.assertRoundsTo(row.printed("e4_pct"), percent(from4));
        double from10 = volume(celsius, highPressure) / volume(10, highPressure);
        PrintedWaterValue.assertRoundsTo(row.printed("e10_pct"), percent(from10));
        double usual = volume(celsius, usualOrBoiling) / volume(4, usualPressure);
        PrintedWaterValue.assertRoundsTo(row.printed("e4_300kPa_pct"), percent(usual));
    }

    @ParameterizedTest
    @MethodSource("saturatedLiquid")
    void saturatedTableAndIf97MeetTheInchPoundTable(WaterReferenceTable.Row row) {
        Temperature temperature = Temperature.fahrenheit(row.number("t_degF"));
        AbsolutePressure vapourPressure = Water.SATURATED_TABLE.vapourPressure(temperature);
        double byTable = Water.SATURATED_TABLE
                .specificVolume(temperature, vapourPressure)
                .in(Units.CUBIC_FOOT_PER_POUND);
        double byIf97 =
                Water.IAPWS_IF97.specificVolume(temperature, vapourPressure).in(Units.CUBIC_FOOT_PER_POUND);

        PrintedWaterValue.assertRoundsTo(row.printed("t_degC"), temperature.in(Units.CELSIUS));
        PrintedWaterValue.assertRoundsTo(row.printed("psat_psia"), vapourPressure.in(Units.PSI));
        PrintedWaterValue.assertRoundsTo(row.printed("vf_ft3lb"), byTable);
        PrintedWaterValue.assertRoundsTo(row.printed("vf_ft3lb"), byIf97);
    }

    private static double volume(double celsius, double pascals) {
        return Water.IAPWS_IF97.specificVolumeSi(kelvins(celsius), pascals);
    }

    private static double kelvins(double celsius) {
        return Temperature.celsius(celsius).si();
    }

    private static double percent(double ratio) {
        return (ratio - 1) * 100;
    }

    private static double ppm(double value, double reference) {
        return (value / reference - 1) * 1e6;
    }
}
