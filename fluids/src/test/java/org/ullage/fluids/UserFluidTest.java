package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.density;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnreadableQuantityException;

/** Fluids of the user's own. */
class UserFluidTest {

    private static final Source SOURCE = Source.published("data sheet", "2024");
    private static final String HEADER = "temperature [degC], density [kg/m3]\n";

    /** A column of the ASHRAE table as a user would type it. */
    private static String column(String key, int percent) {
        NumberTable table = NumberTable.read("expected-ashrae-density-" + key + ".tsv");
        StringBuilder csv = new StringBuilder(HEADER);
        for (int row = 0; row < table.size(); row++) {
            if (!table.text(row, "v" + percent).isBlank()) {
                csv.append(table.text(row, "t_degC"))
                        .append(", ")
                        .append(table.text(row, "v" + percent))
                        .append('\n');
            }
        }
        return csv.toString();
    }

    private static String water(int step, int decimals) {
        StringBuilder csv = new StringBuilder(HEADER);
        for (int t = 0; t <= 100; t += step) {
            csv.append(t).append(',');
            csv.append(String.format(Locale.ROOT, "%." + decimals + "f%n", density(Water.KELL_1975, t)));
        }
        return csv.toString();
    }

    @Test
    void misprintIsCaught() {
        assertThatThrownBy(() -> UserFluidTable.read("EG 10 %", column("ethylene", 10), SOURCE))
                .hasMessage(
                        "density of EG 10 % at 30 degC 1009.62 kg/m3 is not allowed: it must be within 0.030 kg/m3 of"
                                + " 1009.915 kg/m3, which the rows beside it lead to; correct it or a row beside it, or read the"
                                + " table without the outlier check");
        assertThat(UserFluidTable.readWithoutOutlierCheck("EG 10 %", column("ethylene", 10), SOURCE)
                        .fluid()
                        .name())
                .isEqualTo("EG 10 %");
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 20, 30, 40, 50, 60})
    void soundColumnsPass(int percent) {
        UserFluid fluid =
                UserFluidTable.read("PG", column("propylene", percent), SOURCE).fluid();
        GlycolSolution ours = Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(percent));
        assertThat(density(fluid, 43.7)).isCloseTo(density(ours, 43.7), within(1e-9));
        if (percent > 10) {
            UserFluidTable.read("EG", column("ethylene", percent), SOURCE);
        }
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "5, 1", "5, 2", "5, 4", "10, 2", "10, 5", "20, 2", "20, 3", "25, 2"})
    void waterPassesWithItsDensityMaximum(int step, int decimals) {
        UserFluid fluid =
                UserFluidTable.read("water", water(step, decimals), SOURCE).fluid();
        assertThat(fluid.lowest()).isEqualTo(celsius(0));
    }

    @Test
    void errorInAnyRowIsCaughtWhereverItStands() {
        String[] lines = column("propylene", 30).split("\n", -1);
        for (int row = 1; row < lines.length - 1; row++) {
            String[] spoiled = lines.clone();
            double density = Double.parseDouble(lines[row].split(", ", -1)[1]);
            spoiled[row] = lines[row].split(",", -1)[0] + String.format(Locale.ROOT, ", %.2f", density - 0.6);
            String temperature = lines[row].split(",", -1)[0];
            assertThatThrownBy(() -> UserFluidTable.read("PG", String.join("\n", spoiled), SOURCE))
                    .as("row at " + temperature)
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageStartingWith("density of PG at " + temperature + " degC ");
        }
    }

    @Test
    void risingDensityIsRefused() {
        assertThatThrownBy(() -> UserFluidTable.read("oil", HEADER + "20, 900\n30, 890\n40, 899\n", SOURCE))
                .hasMessage(
                        "density of oil at 40 degC 899.0 kg/m3 is not allowed: it must be at most the 890.0 kg/m3 at"
                                + " 30 degC: density falls with temperature, but for a maximum below 10.0 degC; correct one of"
                                + " the two rows");
    }

    @Test
    void unitsBesideTheNumbersAnyOrderAndAReader() {
        String csv = """
                # from the data sheet
                density;note;Temperature
                62.4 lb/ft3;a;40 degF

                61.2 lb/ft3;b;150 degF
                59.8 lb/ft3;c;212 degF
                """;
        UserFluid fluid =
                UserFluidTable.read("brew", new StringReader(csv), SOURCE).fluid();
        assertThat(density(fluid, 100)).isCloseTo(Density.parse("59.8 lb/ft3").si(), within(1e-9));
        assertThat(fluid.source()).isEqualTo(SOURCE);
        assertThat(fluid.isWater()).isFalse();
        assertThat(fluid).hasToString("brew (density table)");
    }

    @Test
    void concentrationAxis() {
        StringBuilder csv = new StringBuilder("concentration [vol%], temperature [degC], density [kg/m3]\n");
        for (int percent : new int[] {20, 30, 40, 50}) {
            column("propylene", percent)
                    .lines()
                    .skip(1)
                    .forEach(line ->
                            csv.append(percent).append(", ").append(line).append('\n'));
        }
        UserFluidTable table = UserFluidTable.read("PG", csv.toString(), SOURCE);
        UserFluid fluid = table.at(vol(33));
        assertThat(density(fluid, 62))
                .isCloseTo(density(Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(33)), 62), within(0.02));
        assertThat(fluid.lowest()).isEqualTo(celsius(-10));
        assertThat(fluid.name()).isEqualTo("PG 33 vol%");
        assertThatThrownBy(() -> table.at(vol(19)))
                .hasMessage("concentration of PG 19.0 % is not allowed: it must be 20.0 to 50.0 % in the table; give a"
                        + " concentration inside the table, or a table that reaches further");
        assertThatThrownBy(() -> table.at(MassFraction.percent(30))).hasMessageContaining("by volume, as in the table");
        assertThatThrownBy(table::fluid).hasMessageContaining("stated, since the table has a column of it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''| header of the density table of x \"\" is not allowed",
                "'t, rho'| header of the density table of x \"t, rho\" is not allowed",
                "'temperature [degC], density [kg/m3]'| number of rows in the density table of x 0 rows",
                "'temperature [degC], density [kg/m3]~1,2'| number of rows in the density table of x 1 rows",
                "'temperature [degC], density [kg/m3]~1,000,2'| row of the density table of x \"1,000,2\" with 3 cells",
                "'temperature [degC], density [kg/m3]~1,900~1,899~2,890'| temperature in the density table of x 1 degC",
                "'temperature [degC], density [kg/m3]~1,-900~5,899~9,890'| density -900"
            })
    void badTables(String csv, String message) {
        assertThatThrownBy(() -> UserFluidTable.read("x", csv.replace('~', '\n'), SOURCE))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void cellsThatAreNoNumbers() {
        assertThatThrownBy(() -> UserFluidTable.read("x", HEADER + "ten, 900", SOURCE))
                .isInstanceOf(UnreadableQuantityException.class);
        assertThatThrownBy(() -> UserFluidTable.read("x", "temperature, density\n10, 900", SOURCE))
                .hasMessageContaining("the unit is missing");
        assertThatThrownBy(() -> UserFluidTable.read(
                        "x",
                        "concentration, temperature, density\n10 vol%, 10 degC, 900 kg/m3\n10 mass%, 20 degC, 890 kg/m3",
                        SOURCE))
                .hasMessageContaining("state all concentrations of a table in one way");
    }

    @Test
    void fromAFunction() {
        UserFluid fluid = UserFluid.ofFunction(
                "linear", t -> Density.kilogramsPerCubicMetre(1200 - t.si() / 2), celsius(-10), celsius(120), SOURCE);
        assertThat(density(fluid, 26.85)).isCloseTo(1050, within(1e-9));
        assertThat(fluid.model()).isEqualTo("function of the user");
        assertThat(fluid.vapourPressureSi(373.15)).isEqualTo(Iapws97.saturationPressure(373.15));
        assertThat(fluid.withVapourPressure(t -> AbsolutePressure.bar(0.1), SOURCE)
                        .vapourPressureSi(373.15))
                .isEqualTo(10_000);
        assertThatThrownBy(() -> density(fluid, 121))
                .hasMessage("temperature of linear 121 degC is not allowed: it must be -10 degC to 120 degC; give a"
                        + " temperature inside the range, or a table or function that reaches further");
    }

    @Test
    void badFunctions() {
        assertThatThrownBy(() -> UserFluid.ofFunction(
                        "up", t -> Density.kilogramsPerCubicMetre(t.si()), celsius(10), celsius(50), SOURCE))
                .hasMessageContaining("density falls with temperature");
        assertThatThrownBy(() -> UserFluid.ofFunction(
                        "none", t -> Density.kilogramsPerCubicMetre(Double.NaN), celsius(10), celsius(50), SOURCE))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> UserFluid.ofFunction(
                        "back", t -> Density.kilogramsPerCubicMetre(1000), celsius(50), celsius(10), SOURCE))
                .hasMessage("highest temperature of back 10 degC is not allowed: it must be above the lowest, 50 degC;"
                        + " exchange the two or give a wider range");
    }

    /** A sheet by mass is asked by mass; the messages say which way a table goes. */
    @Test
    void concentrationAxisByMass() {
        String csv = """
                concentration [mass%], temperature [degC], density [kg/m3]
                20, 0, 1020
                20, 40, 1000
                20, 80, 980
                40, 0, 1040
                40, 40, 1020
                40, 80, 1000
                """;
        UserFluidTable table = UserFluidTable.read("EG", csv, SOURCE);
        UserFluid fluid = table.at(MassFraction.percent(30));
        assertThat(fluid.name()).isEqualTo("EG 30 mass%");
        assertThat(density(fluid, 40)).isCloseTo(1010, within(1e-9));
        assertThatThrownBy(() -> table.at(vol(30)))
                .hasMessageContaining("30 vol%")
                .hasMessageContaining("by mass, as in the table");
        assertThatThrownBy(() -> UserFluidTable.read("EG", HEADER + "0, 1020\n40, 1000\n80, 980", SOURCE)
                        .at(vol(30)))
                .hasMessageContaining("left out");
        assertThatThrownBy(() -> UserFluidTable.read("EG", HEADER + "0, 1020\n40, 1000\n80, 980", SOURCE)
                        .at(MassFraction.percent(30)))
                .hasMessageContaining("left out");
    }

    @Test
    void concentrationsOfTwoKindsAreRefusedWhicheverCameFirst() {
        String head = "concentration, temperature, density\n";
        String byMass = "10 mass%, 20 degC, 890 kg/m3\n";
        String byVolume = "10 vol%, 10 degC, 900 kg/m3\n";
        assertThatThrownBy(() -> UserFluidTable.read("x", head + byMass + byVolume, SOURCE))
                .hasMessageContaining("by mass as in the rows before");
        assertThatThrownBy(() -> UserFluidTable.read("x", head + byVolume + byMass, SOURCE))
                .hasMessageContaining("by volume as in the rows before");
    }

    @Test
    void densityMayStayTheSameBetweenRowsOfFewDigits() {
        assertThat(UserFluidTable.read("oil", HEADER + "20, 900\n21, 900\n22, 899", SOURCE)
                        .fluid()
                        .highest())
                .isEqualTo(celsius(22));
        // water to one decimal stays the same twice before it rises to its maximum
        UserFluidTable.read("water", HEADER + "0, 999.8\n1, 999.9\n2, 999.9\n4, 1000.0\n10, 999.7", SOURCE);
        UserFluidTable.read("brine", HEADER + "0, 999.9\n1, 999.9\n4, 1000.0\n10, 999.7", SOURCE);
    }

    /** A maximum below 10 degC is a liquid's, up to and with the row at 10 degC; a minimum is a mistake. */
    @Test
    void densityMayRiseOnlyBelowTenDegreesAndOnlyBeforeItFell() {
        UserFluidTable.read("brew", HEADER + "0, 999\n10, 1000\n20, 998", SOURCE);
        assertThatThrownBy(() -> UserFluidTable.read("brew", HEADER + "0, 999\n10.1, 1000\n20, 998", SOURCE))
                .hasMessageStartingWith("density of brew at 10.1 degC 1000.0 kg/m3");
        assertThatThrownBy(() -> UserFluidTable.read("brew", HEADER + "0, 1000\n4, 999\n8, 1000", SOURCE))
                .hasMessageStartingWith("density of brew at 8 degC 1000.0 kg/m3");
    }

    @Test
    void fourRowsAreTooFewToTellWhichIsOut() {
        String four = HEADER + "0, 1000\n20, 999\n40, 950\n60, 949";
        assertThat(density(UserFluidTable.read("x", four, SOURCE).fluid(), 20)).isEqualTo(999);
        assertThatThrownBy(() -> UserFluidTable.read("x", four + "\n80, 948", SOURCE))
                .hasMessageStartingWith("density of x at ");
    }

    /** A function may know nothing outside its range. */
    @Test
    void functionIsTriedFromEndToEndAndNowhereElse() {
        List<Temperature> tried = new ArrayList<>();
        DensityFunction function = t -> {
            tried.add(t);
            return Density.kilogramsPerCubicMetre(1000);
        };
        UserFluid fluid = UserFluid.ofFunction("even", function, celsius(10), celsius(60), SOURCE);
        assertThat(tried)
                .hasSize(101)
                .allSatisfy(t -> assertThat(t).isBetween(celsius(10), celsius(60)))
                .contains(celsius(10), celsius(60));
        assertThatThrownBy(() -> fluid.vapourPressureSi(celsius(61).si()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("10 degC to 60 degC");
        assertThatThrownBy(() -> UserFluid.ofFunction("point", function, celsius(10), celsius(10), SOURCE))
                .hasMessageContaining("above the lowest, 10 degC");
    }
}
