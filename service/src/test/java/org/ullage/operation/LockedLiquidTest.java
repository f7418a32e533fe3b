package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.method.TestFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/**
 * The slope of locked liquid. The rows are computed with the formula of API Standard 521 for blocked-in piping and the expansion and
 * compressibility of water by IAPWS-95 at 3 bar absolute, which the fluid here is given as they are printed, to four or five digits.
 */
class LockedLiquidTest {

    private static final AbsolutePressure THREE_BAR = AbsolutePressure.bar(3);

    /** Expansion in 1e-6/K and compressibility in 1e-10/Pa by temperature. */
    private static final Map<Integer, SpringyFluid> WATER = Map.of(
            10, new SpringyFluid(88.41e-6, 4.7783e-10),
            20, new SpringyFluid(207.1e-6, 4.5868e-10),
            40, new SpringyFluid(385.54e-6, 4.4215e-10),
            60, new SpringyFluid(523.15e-6, 4.4474e-10),
            80, new SpringyFluid(641.14e-6, 4.6122e-10));

    private static LockedLiquid rigid(int celsius) {
        return LockedLiquid.rigid(WATER.get(celsius), Temperature.celsius(celsius), THREE_BAR);
    }

    private static PipeWall wall(WallMaterial material, double bore, double wall) {
        return new PipeWall(material, Length.millimetres(bore), Length.millimetres(wall));
    }

    private static LockedLiquid locked(String material, int celsius, double bore, double wall) {
        LockedLiquid rigid = rigid(celsius);
        return switch (material) {
            case "steel" -> rigid.in(wall(WallMaterial.STEEL, bore, wall));
            case "copper" -> rigid.in(wall(WallMaterial.COPPER, bore, wall));
            case "PE-X" ->
                rigid.in(wall(WallMaterial.crossLinkedPolyethylene(Temperature.celsius(celsius)), bore, wall));
            default -> rigid;
        };
    }

    @ParameterizedTest
    @CsvSource({
        "rigid, 10, 1, 1, 1.85, 14.91, 1.08",
        "rigid, 20, 1, 1, 4.515, 36.38, 0.44",
        "rigid, 40, 1, 1, 8.72, 70.26, 0.23",
        "rigid, 60, 1, 1, 11.763, 94.78, 0.17",
        "rigid, 80, 1, 1, 13.901, 112.01, 0.14",
        "steel, 10, 26.64, 3.38, 1.017, 8.2, 1.97",
        "steel, 20, 26.64, 3.38, 3.449, 27.79, 0.58",
        "steel, 60, 26.64, 3.38, 10.103, 81.41, 0.2",
        "steel, 80, 26.64, 3.38, 12.135, 97.78, 0.16",
        "steel, 10, 52.5, 3.91, 0.968, 7.8, 2.07",
        "steel, 20, 52.5, 3.91, 3.275, 26.39, 0.61",
        "steel, 40, 52.5, 3.91, 6.909, 55.67, 0.29",
        "steel, 60, 52.5, 3.91, 9.58, 77.19, 0.21",
        "steel, 80, 52.5, 3.91, 11.527, 92.88, 0.17",
        "steel, 10, 154.05, 7.11, 0.903, 7.27, 2.22",
        "steel, 20, 154.05, 7.11, 3.047, 24.55, 0.66",
        "steel, 40, 154.05, 7.11, 6.413, 51.67, 0.31",
        "steel, 80, 154.05, 7.11, 10.727, 86.43, 0.19",
        "copper, 10, 19.94, 1.143, 0.629, 5.07, 3.18",
        "copper, 40, 19.94, 1.143, 5.81, 46.82, 0.34",
        "copper, 60, 19.94, 1.143, 8.155, 65.71, 0.25",
        "copper, 40, 20.2, 0.9, 5.444, 43.87, 0.37",
        "copper, 60, 20.2, 0.9, 7.643, 61.59, 0.26",
        "copper, 80, 20.2, 0.9, 9.301, 74.94, 0.22",
        "copper, 20, 51.03, 1.473, 2.16, 17.41, 0.93",
        "copper, 60, 51.03, 1.473, 6.628, 53.4, 0.3",
        "copper, 80, 51.03, 1.473, 8.093, 65.21, 0.25",
        "PE-X, 10, 12, 2, -0.777, -6.26, 0",
        "PE-X, 20, 12, 2, -0.515, -4.15, 0",
        "PE-X, 40, 12, 2, -0.154, -1.24, 0",
        "PE-X, 60, 12, 2, -0.012, -0.1, 0",
        "PE-X, 80, 12, 2, 0.051, 0.41, 38.88",
        "PE-X, 20, 17.04, 2.59, -0.473, -3.81, 0",
        "PE-X, 40, 17.04, 2.59, -0.141, -1.13, 0",
        "PE-X, 60, 17.04, 2.59, -0.011, -0.09, 0",
        "PE-X, 80, 17.04, 2.59, 0.047, 0.38, 42.54",
    })
    void printedSlopes(
            String material, int celsius, double bore, double wall, double slope, double slopePsi, double warming) {
        LockedLiquid water = locked(material, celsius, bore, wall);
        // Half the last digit printed, and what half the last digit of the expansion (1e-8/K, at 20 degC 1e-7/K) is
        // worth.
        double expansion = celsius == 20 ? 0.5e-7 : 0.5e-8;
        PipeWall pipe = water.wall();
        double compliance = water.compressibilitySi() + (pipe == null ? 0 : pipe.stretchSi());
        double tolerance = 0.0005 + expansion / compliance / 1e5 + Math.abs(slope) * 2e-5;
        assertThat(water.slopeSi() / 1e5).isCloseTo(slope, within(tolerance));
        assertThat(water.riseFor(TemperatureDifference.fahrenheitDegrees(1)).in(Units.PSI))
                .isCloseTo(slopePsi, within(tolerance * 14.504 / 1.8 + 0.005));
        if (warming > 0) {
            assertThat(water.warmingFor(PressureDifference.bar(2)).in(Units.KELVIN_DIFFERENCE))
                    .isCloseTo(warming, within(0.005 + warming * tolerance / slope));
        }
    }

    @Test
    void byHand() {
        // 26.64 / (2 x 200e9 x 3.38) x 1.9 = 3.744e-11/Pa; (207.1e-6 - 36e-6) / (4.5868e-10 + 0.3744e-10) = 344 900
        // Pa/K
        LockedLiquid steel = locked("steel", 20, 26.64, 3.38);
        assertThat(steel.wall().stretchSi()).isCloseTo(3.7438e-11, within(1e-15));
        assertThat(steel.slopeSi()).isCloseTo(344_900, within(50.0));
        assertThat(steel.text(UnitSystem.SI)).isEqualTo("springy fluid locked at 20 degC: 3.45 bar for each K");
        assertThat(steel.text(UnitSystem.IP)).isEqualTo("springy fluid locked at 68 degF: 27.8 psi for each degF");
        assertThat(steel.workings().text(UnitSystem.SI))
                .contains("d / (2 * E * w) * (2.5 - 2 * nu)")
                .contains("(alpha_v - 3 * alpha_l) / (chi + k)");
        assertThat(rigid(20).workings().steps()).hasSize(3);
    }

    @Test
    void polyethyleneSoftensBetweenItsRows() {
        assertThat(WallMaterial.crossLinkedPolyethylene(Temperature.celsius(50))
                        .modulus()
                        .in(Units.STRESS_MEGAPASCAL))
                .isCloseTo(425, within(1e-9));
        assertThatThrownBy(() -> WallMaterial.crossLinkedPolyethylene(Temperature.celsius(90)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("from 10 degC to 80 degC");
    }

    @Test
    void plasticGainsNothing() {
        assertThatThrownBy(() -> locked("PE-X", 20, 12, 2).warmingFor(PressureDifference.bar(2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("warming does not raise the pressure");
    }

    @Test
    void aModelWithoutPressureIsRefused() {
        LockedLiquid stiff = LockedLiquid.rigid(TestFluid.WATER, Temperature.celsius(20), THREE_BAR);
        assertThatThrownBy(stiff::slopeSi)
                .isInstanceOf(MissingInputException.class)
                .hasMessageStartingWith("compressibility of test water by straight line is missing");
    }

    @Test
    void atTheEndsOfTheModel() {
        SpringyFluid fluid = new SpringyFluid(4e-4, 4.5e-10);
        LockedLiquid coldest = LockedLiquid.rigid(fluid, fluid.lowest(), THREE_BAR);
        LockedLiquid boiling =
                LockedLiquid.rigid(fluid, Temperature.celsius(100), fluid.vapourPressure(Temperature.celsius(100)));
        assertThat(coldest.slopeSi()).isCloseTo(4e-4 / 4.5e-10, within(10.0));
        assertThat(boiling.slopeSi()).isCloseTo(4e-4 / 4.5e-10, within(10.0));
    }

    @Test
    void badWalls() {
        assertThatThrownBy(() -> wall(WallMaterial.STEEL, 0, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> wall(WallMaterial.STEEL, 10, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> material(0, 0.3)).hasMessageContaining("modulus of own");
        assertThatThrownBy(() -> material(1000, -0.01)).hasMessageContaining("Poisson's ratio of own -0.01");
        assertThatThrownBy(() -> material(1000, 0.51)).hasMessageContaining("Poisson's ratio of own 0.51");
        assertThat(material(1000, 0).poisson()).isZero();
        assertThat(material(1000, 0.5).poisson()).isEqualTo(0.5);
    }

    private static WallMaterial material(double megapascals, double poisson) {
        return new WallMaterial(
                "own",
                Stress.megapascals(megapascals),
                WallMaterial.STEEL.linearExpansion(),
                poisson,
                WallMaterial.STEEL.source());
    }

    @Test
    void aWallSoThinThatItsStretchIsNotFiniteIsRefused() {
        assertThatThrownBy(() -> new PipeWall(WallMaterial.STEEL, Length.metres(1e300), Length.ofSi(Double.MIN_NORMAL)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("wall thickness");
    }
}
