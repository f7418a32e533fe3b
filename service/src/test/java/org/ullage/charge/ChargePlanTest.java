package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.provenance.Source;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Caution;

/**
 * 1000 L of a fluid with v = 0.001 (1 + 0.0005 t) from 10 to 80 degC, 1 bar of air; charge and cold pressure 1 bar, final pressure 2.6
 * bar, reserve 0.5 % of the contents, 200 L vessel. The method takes no pipe credit.
 */
class ChargePlanTest {

    private static final Volume NOMINAL = Volume.litres(200);
    private static final Temperature TEN = Temperature.celsius(10);
    private static final Temperature TWENTY = Temperature.celsius(20);
    private static final Temperature EIGHTY = Temperature.celsius(80);

    private static final PressureInputs PRESSURES = PressureInputs.NONE
            .withAtmosphere(AbsolutePressure.bar(1))
            .withColdPressure(GaugePressure.bar(1))
            .withFinalPressure(GaugePressure.bar(2.6))
            .withReliefSetting(GaugePressure.bar(3));

    private static SizingJob job(VesselType vessel, PressureInputs pressures) {
        return Jobs.with(Jobs.steel(TestFluid.MIXTURE, vessel, TEN, EIGHTY), pressures);
    }

    private static Sizing sizing() {
        return Methods.EN_12828.size(job(VesselType.bladder(), PRESSURES));
    }

    private static String warnings(ChargeJob job) {
        return job.plan().warnings().stream().map(Caution::text).toList().toString();
    }

    @Test
    void onADayAsWarmAsTheChargeIsMeantForItIsTheWantedOne() {
        ChargePlan plan = ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN).plan();
        assertThat(plan.toSet()).isEqualTo(plan.wanted());
        assertThat(plan.wanted()).isEqualTo(new ChargeReading(GaugePressure.bar(1), TWENTY, AbsolutePressure.bar(1)));
        assertThat(plan.warnings()).isEmpty();
        assertThat(plan.found()).isEmpty();
    }

    @Test
    void byHandOnAColdDay() {
        ChargePlan plan =
                ChargeJob.of(sizing(), NOMINAL, Temperature.celsius(0), TEN).plan();
        double charge = 2 * 273.15 / 293.15;
        assertThat(plan.toSet().pressure().in(Units.BAR)).isCloseTo(charge - 1, within(1e-12));
        // filled at the coldest temperature: the reserve of 5 L, no contraction to come
        assertThat(plan.waterAfterFilling().in(Units.LITRE)).isCloseTo(5, within(1e-9));
        assertThat(plan.fillPressure().in(Units.BAR)).isCloseTo(charge * 200 / 195 - 1, within(1e-9));
        // hot the gas is at 20 degC again, as the method has it
        double expansion = 1000 * 0.035 / 1.005;
        assertThat(plan.hotPressure().in(Units.BAR)).isCloseTo(2 * 200 / (195 - expansion) - 1, within(1e-9));
        assertThat(plan.window().lowest().in(Units.BAR)).isCloseTo(charge * 200 / 195 - 1, within(1e-9));
    }

    @Test
    void filledWarmTheVesselHoldsTheContractionToo() {
        ChargePlan plan = ChargeJob.of(sizing(), NOMINAL, TWENTY, TWENTY).plan();
        double held = 5 + 1000 * 0.005 / 1.005;
        assertThat(plan.waterAfterFilling().in(Units.LITRE)).isCloseTo(held, within(1e-9));
        assertThat(plan.fillPressure().in(Units.BAR)).isCloseTo(2 * 200 / (200 - held) - 1, within(1e-9));
    }

    @Test
    void aChargeBelowTheColdPressureIsFilledUpToIt() {
        Sizing below =
                Methods.EN_12828.size(job(VesselType.bladder(), PRESSURES.withPreCharge(GaugePressure.bar(0.6))));
        ChargePlan plan = ChargeJob.of(below, NOMINAL, TWENTY, TEN).plan();
        // 200 (1 - 1.6/2) = 40 L at the cold pressure, more than the reserve
        assertThat(plan.waterAfterFilling().in(Units.LITRE)).isCloseTo(40, within(1e-9));
        assertThat(plan.fillPressure().in(Units.BAR)).isCloseTo(1, within(1e-9));
        assertThat(plan.window().lowest().in(Units.BAR)).isCloseTo(1.6 * 200 / 195 - 1, within(1e-9));
    }

    @Test
    void gasTemperaturesOfTheMethodCount() {
        GasTemperatures own =
                new GasTemperatures(Temperature.celsius(15), TEN, Temperature.celsius(40), Source.given());
        Sizing warm = Methods.EN_12828.with(own).size(job(VesselType.bladder(), PRESSURES));
        ChargePlan plan =
                ChargeJob.of(warm, NOMINAL, Temperature.celsius(15), TEN).plan();
        assertThat(plan.toSet().pressure()).isEqualTo(GaugePressure.bar(1));
        // at the cold pressure of 2 bar abs the colder gas leaves room for 200 (1 - 283.15/288.15) L, less than the
        // reserve
        assertThat(plan.waterAfterFilling().in(Units.LITRE)).isCloseTo(5, within(1e-9));
        double expansion = 1000 * 0.035 / 1.005;
        assertThat(plan.hotPressure().in(Units.BAR))
                .isCloseTo(2 * 313.15 / 288.15 * 200 / (195 - expansion) - 1, within(1e-9));
    }

    @Test
    void theGaugeIsCorrectedForHeight() {
        ChargePlan plan = ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN)
                .gaugeAbove(Length.metres(5))
                .plan();
        double column = 5 * 0.0980665;
        assertThat(plan.gaugeAfterFilling().in(Units.BAR))
                .isCloseTo(plan.fillPressure().in(Units.BAR) - column, within(1e-9));
        assertThat(plan.gaugeWhenHot().in(Units.BAR))
                .isCloseTo(plan.hotPressure().in(Units.BAR) - column, within(1e-9));
    }

    @Test
    void chargedInAWorkshopDownInTheValley() {
        ChargePlan plan = ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN)
                .chargedUnder(AbsolutePressure.bar(1.05))
                .plan();
        assertThat(plan.toSet().pressure().in(Units.BAR)).isCloseTo(0.95, within(1e-12));
        assertThat(plan.fillPressure())
                .isEqualTo(ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN).plan().fillPressure());
        Sizing unknown = Methods.EN_12828.size(job(VesselType.bladder(), PRESSURES.withAtmosphere(null)));
        assertThat(warnings(ChargeJob.of(unknown, NOMINAL, TWENTY, TEN).chargedUnder(AbsolutePressure.bar(0.9))))
                .contains("The air pressure of the site was not given");
    }

    @Test
    void whatWasFoundIsComparedAtItsOwnTemperature() {
        ChargeJob job = ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN).found(GaugePressure.bar(1.5), EIGHTY);
        FoundCharge found = job.plan().found().orElseThrow();
        assertThat(found.correction().in(Units.BAR)).isCloseTo(2 * 353.15 / 293.15 - 2.5, within(1e-12));
        double absolute = 2.5 * 293.15 / 353.15;
        assertThat(found.acceptance().in(Units.LITRE))
                .isCloseTo(
                        200 * (1 - absolute / 3.6 - Math.max(0, 1 - absolute / 2)) - 200 * (1 - 2 / 3.6), within(1e-9));
        assertThat(found.action()).isEqualTo(ChargeAction.LEAVE);
        assertThat(job.within(PressureDifference.bar(0.01))
                        .plan()
                        .found()
                        .orElseThrow()
                        .action())
                .isEqualTo(ChargeAction.BLEED);
    }

    @Test
    void aChargeThatWasSetByThePlanIsFoundRight() {
        ChargeJob job = ChargeJob.of(sizing(), NOMINAL, Temperature.celsius(-5), TEN);
        FoundCharge found =
                job.found(job.plan().toSet().at(EIGHTY)).plan().found().orElseThrow();
        assertThat(found.correction().si()).isCloseTo(0, within(1e-6));
        assertThat(found.acceptance().si()).isCloseTo(0, within(1e-12));
        assertThat(found.action()).isEqualTo(ChargeAction.LEAVE);
    }

    @Test
    void aChosenFillPressureIsHeldAgainstTheWindow() {
        ChargeJob job = ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN);
        assertThat(job.filledTo(GaugePressure.bar(1.3)).plan().fillPressure().in(Units.BAR))
                .isCloseTo(1.3, within(1e-12));
        assertThat(warnings(job.filledTo(GaugePressure.bar(1.3)))).isEqualTo("[]");
        assertThat(warnings(job.filledTo(GaugePressure.bar(1.02)))).contains("the reserve is not kept");
        assertThat(warnings(job.filledTo(GaugePressure.bar(0.9)))).contains("the vessel stays empty");
        assertThat(warnings(job.filledTo(GaugePressure.bar(1.8)))).contains("above the highest");
        assertThat(warnings(job.filledTo(GaugePressure.bar(2.2)))).contains("relief valve lifts");
    }

    @Test
    void filledToTheHighestPressureItReachesTheFinalPressure() {
        ChargeJob job = ChargeJob.of(sizing(), NOMINAL, Temperature.celsius(5), TWENTY);
        GaugePressure highest = job.plan().window().highest();
        assertThat(job.filledTo(highest).plan().hotPressure().in(Units.BAR)).isCloseTo(2.6, within(1e-9));
    }

    /** 10 m below the vessel the valve sees the column as well, so it lifts at 0.98 bar less at the vessel. */
    @Test
    void theReliefValveLiftsAtItsOwnPlace() {
        PressureInputs below = PRESSURES
                .withFinalPressure(GaugePressure.bar(1.9))
                .withPlace(VesselPlace.AT_VALVE.withValveAbove(Length.metres(-10)));
        ChargeJob job = ChargeJob.of(Methods.EN_12828.size(job(VesselType.bladder(), below)), NOMINAL, TWENTY, TEN);
        double lifts = 3 - 0.980665;
        assertThat(job.plan().hotPressure().in(Units.BAR)).isLessThan(lifts);
        assertThat(warnings(job)).doesNotContain("relief valve lifts");
        assertThat(job.filledTo(GaugePressure.bar(1.6)).plan().hotPressure().in(Units.BAR))
                .isBetween(lifts, 3.0);
        assertThat(warnings(job.filledTo(GaugePressure.bar(1.6)))).contains("relief valve lifts");
    }

    @Test
    void theVesselItselfIsJudged() {
        assertThat(warnings(ChargeJob.of(sizing(), Volume.litres(80), TWENTY, TEN)))
                .contains("too small for this filling");
        assertThatThrownBy(() ->
                        ChargeJob.of(sizing(), Volume.litres(30), TWENTY, TEN).plan())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("take a larger vessel");
        Sizing diaphragm = Methods.EN_12828.size(job(VesselType.diaphragm(), PRESSURES));
        assertThat(warnings(ChargeJob.of(diaphragm, NOMINAL, TWENTY, TEN))).contains("acceptance limit of the vessel");
        Sizing limited = Methods.EN_12828.size(job(VesselType.diaphragm(VolumeFraction.percent(15)), PRESSURES));
        assertThat(warnings(ChargeJob.of(limited, NOMINAL, TWENTY, TEN))).contains("more than its acceptance limit");
    }

    @Test
    void impossibleJobsAreRefused() {
        Sizing open = Methods.ASHRAE.size(Jobs.steel(TestFluid.MIXTURE, VesselType.open(), TEN, EIGHTY));
        assertThatThrownBy(() -> ChargeJob.of(open, NOMINAL, TWENTY, TEN))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("an open tank has no charge to set");
        assertThatThrownBy(() -> ChargeJob.of(sizing(), Volume.litres(0), TWENTY, TEN))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("nominal volume");
        assertThatThrownBy(() -> ChargeJob.of(sizing(), NOMINAL, TWENTY, Temperature.celsius(5))
                        .plan())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("fill temperature 5 degC");
    }

    @Test
    void aChargeThatNoGaugeShowsIsWarnedOf() {
        Sizing none = Methods.EN_12828.size(job(VesselType.bladder(), PRESSURES.withPreCharge(GaugePressure.bar(0))));
        ChargeJob job = ChargeJob.of(none, Volume.litres(400), TWENTY, TEN);
        assertThat(job.plan().toSet().pressure().si()).isZero();
        assertThat(warnings(job)).contains("The charge to set is not above the air pressure");
        assertThat(job.plan().text(UnitSystem.SI)).contains("! The charge to set is not above the air pressure");
    }

    @Test
    void aPlainTankIsWarnedOf() {
        Sizing plain = Methods.ASHRAE.size(job(VesselType.plainSteel(), PRESSURES));
        assertThat(warnings(ChargeJob.of(plain, Volume.litres(400), Temperature.celsius(0), TEN)))
                .contains("A plain tank has no membrane")
                .contains("The charge to set is not above the air pressure");
    }

    @Test
    void bothSystemsSayTheSame() {
        ChargePlan metric = ChargeJob.of(sizing(), NOMINAL, Temperature.celsius(5), TEN)
                .gaugeAbove(Length.metres(3.048))
                .found(GaugePressure.of(12, Units.PSI), Temperature.celsius(5))
                .plan();
        ChargePlan inchPound = ChargeJob.of(
                        sizing(),
                        Volume.of(NOMINAL.in(Units.US_GALLON), Units.US_GALLON),
                        Temperature.fahrenheit(41),
                        Temperature.fahrenheit(50))
                .gaugeAbove(Length.feet(10))
                .found(GaugePressure.psi(12), Temperature.fahrenheit(41))
                .plan();
        assertThat(inchPound.text(UnitSystem.SI)).isEqualTo(metric.text(UnitSystem.SI));
        assertThat(metric.text(UnitSystem.IP))
                .contains("set the charge to 13.02 psi with the gas at 41 degF")
                .contains(" gal of water");
        assertThat(metric.text(UnitSystem.SI))
                .contains("set the charge to 0.8977 bar with the gas at 5 degC")
                .contains("that is 1 bar with the gas at 20 degC")
                .contains("  found 0.8274 bar")
                .contains("with the loop at 10 degC ")
                .contains("after filling, with the gas at 5 degC")
                .contains("highest temperature and the gas at 20 degC")
                .matches("\\A\\p{ASCII}*\\z");
    }

    @Test
    void workingsShowEveryPressure() {
        String text = ChargeJob.of(sizing(), NOMINAL, Temperature.celsius(5), TWENTY)
                .found(GaugePressure.bar(1.5), TWENTY)
                .plan()
                .workings()
                .text(UnitSystem.SI);
        for (String formula : List.of(
                "(p_0 + p_a_0) * T_d / T_0 - p_a_d",
                "P_d * V_n / (V_n - V_wr - V_c)",
                "P_d * V_n / (V_n * P_h / p_f + V_e)",
                "max(V_wr, V_i) + V_c",
                "P_h * V_n / (V_n - V_w - V_e)",
                "P_hot - p_a - p_st",
                "P_fill - p_a - p_st",
                "p_w - p_x")) {
            assertThat(text).contains(formula);
        }
        String chosen = ChargeJob.of(sizing(), NOMINAL, TWENTY, TWENTY)
                .filledTo(GaugePressure.bar(1.2))
                .plan()
                .workings()
                .text(UnitSystem.IP);
        assertThat(chosen).contains("fill pressure that was chosen").doesNotContain("V_i");
    }

    @Test
    void acceptanceStepsShowLimitAndGasTemperatures() {
        GasTemperatures own = new GasTemperatures(TWENTY, TEN, Temperature.celsius(30), Source.given());
        Sizing limited =
                Methods.EN_12828.with(own).size(job(VesselType.diaphragm(VolumeFraction.percent(50)), PRESSURES));
        assertThat(ChargeJob.of(limited, NOMINAL, TWENTY, TEN)
                        .found(GaugePressure.bar(0.5), TWENTY)
                        .plan()
                        .workings()
                        .text(UnitSystem.SI))
                .contains("min(a, max(0, 1 - P_x * g_f / p_f)) - min(a, max(0, 1 - P_x * g_i / p_i))")
                .contains("min(50 vol%, max(0, 1 - 1.5 bar abs * 1.03411 / 3.6 bar abs))");
    }

    @Test
    void cautionsAreThoseOfTheSizingAndOfTheGas() {
        List<Caution> cautions =
                ChargeJob.of(sizing(), NOMINAL, TWENTY, TEN).plan().cautions();
        assertThat(cautions)
                .containsAll(sizing().cautions())
                .anyMatch(caution -> caution.text().contains("regulator"));
    }

    @Test
    void survivesSerialization() throws IOException, ClassNotFoundException {
        ChargePlan plan = ChargeJob.of(sizing(), NOMINAL, Temperature.celsius(5), TEN)
                .found(GaugePressure.bar(1.5), TWENTY)
                .plan();
        GaugeChoice choice = GaugeChoice.of(
                        Gauge.of(GaugePressure.bar(0), GaugePressure.bar(4), GaugeClasses.EN_1_6),
                        plan.toSet().pressure(),
                        plan.hotPressure(),
                        AbsolutePressure.bar(1))
                .forVessel(VesselAcceptance.of(sizing(), NOMINAL));
        assertThat(copy(plan).text(UnitSystem.SI)).isEqualTo(plan.text(UnitSystem.SI));
        assertThat(copy(plan).workings()).isEqualTo(plan.workings());
        assertThat(copy(choice)).isEqualTo(choice);
        assertThat(copy(GaugeRangeRules.BOILER_ASME_IV)).isEqualTo(GaugeRangeRules.BOILER_ASME_IV);
        ChargeCheckSteps check = new ChargeCheckSteps(VesselConnection.WITHOUT_VALVE);
        assertThat(copy(check).steps()).isEqualTo(check.steps());
    }

    @SuppressWarnings("unchecked")
    private static <T> T copy(T original) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(original);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }
}
