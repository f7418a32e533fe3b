package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.Governing;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Caution;

/** Each method's conventions on a fluid whose expansion can be worked out by hand: (1 + 0.0005 x 80)/(1 + 0.0005 x 10) - 1. */
class MethodConventionsTest {

    private static final Temperature TEN = Temperature.celsius(10);
    private static final Temperature EIGHTY = Temperature.celsius(80);
    private static final double FLUID_EXPANSION = 1.04 / 1.005 - 1;
    private static final double HEAD = 0.980665;

    @Test
    void ashraeSubtractsThePipeTermOfTheContents() {
        Sizing sizing = size(Methods.ASHRAE, VesselType.bladder());
        double net = FLUID_EXPANSION - 3 * 11.7e-6 * 70;
        assertThat(sizing.expansionVolume().in(Units.LITRE)).isCloseTo(1000 * net, within(1e-9));
        assertThat(sizing.reserveVolume()).isEqualTo(Volume.litres(0));
        double cold = HEAD + 4 * 0.0689475729 + 1.01325;
        double last = 2.7 + 1.01325;
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(1000 * net / (1 - cold / last), within(1e-5));
    }

    @Test
    void ashraePlainTankStartsFullOfAir() {
        Sizing sizing = size(Methods.ASHRAE, VesselType.plainSteel());
        double cold = HEAD + 4 * 0.0689475729 + 1.01325;
        double perWater = 1 / (1.01325 / cold - 1.01325 / 3.71325);
        assertThat(sizing.requiredVolume().in(Units.LITRE))
                .isCloseTo(sizing.expansionVolume().in(Units.LITRE) * perWater, within(1e-5));
        assertThat(sizing.preCharge()).isEqualTo(GaugePressure.bar(0));
    }

    @Test
    void ashraeOpenTankIsTwiceTheNetExpansion() {
        Sizing sizing = size(Methods.ASHRAE, VesselType.open());
        assertThat(sizing.requiredVolume().dividedBy(sizing.expansionVolume())).isCloseTo(2, within(1e-12));
        assertThat(sizing.governing()).isEqualTo(Governing.OPEN_ALLOWANCE);
        assertThat(sizing.finalPressure()).isEqualTo(GaugePressure.bar(0));
    }

    @ParameterizedTest
    @CsvSource({"195, 0.03335", "220, 0.0436", "160, 0.0190", "280, 0.0682"})
    void asmeLineAtItsPrintedTemperatures(double fahrenheit, double fraction) {
        // 13 NCAC 13 .0412(d): 0.00041 T - 0.0466
        SizingJob job = Jobs.with(
                job(VesselType.plainSteel(), null, Temperature.fahrenheit(fahrenheit)),
                PressureInputs.NONE.withColdPressure(GaugePressure.psi(12)).withFinalPressure(GaugePressure.psi(60)));
        assertThat(Methods.ASME_IV.size(job).expansionVolume().in(Units.LITRE))
                .isCloseTo(1000 * fraction, within(0.051));
    }

    @Test
    void asmeUsesTheReliefSettingItselfAndTheChargeOfTheKind() {
        Sizing plain = size(Methods.ASME_IV, VesselType.plainSteel());
        assertThat(plain.finalPressure().in(Units.BAR)).isCloseTo(3, within(1e-12));
        assertThat(plain.preCharge()).isEqualTo(GaugePressure.bar(0));
        Sizing diaphragm = size(Methods.ASME_IV, VesselType.diaphragm());
        assertThat(diaphragm.preCharge()).isEqualTo(diaphragm.coldPressure());
    }

    @Test
    void asmeRefusesItsZeroAndWarnsOutsideItsStatedRange() {
        assertThatThrownBy(() -> Methods.ASME_IV.size(job(VesselType.plainSteel(), null, Temperature.fahrenheit(113))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("113 degF")
                .hasMessageContaining("113.7 degF")
                .hasMessageContaining("fluid's density");
        assertThat(asmeWarnings(150, 100)).anyMatch(text -> text.contains("Below 160 degF"));
        assertThat(asmeWarnings(170, 100)).noneMatch(text -> text.contains("stated range"));
        assertThat(asmeWarnings(290, 100)).anyMatch(text -> text.contains("Above 280 degF"));
    }

    private static List<String> asmeWarnings(double fahrenheit, double psi) {
        SizingJob job = Jobs.with(
                job(VesselType.plainSteel(), null, Temperature.fahrenheit(fahrenheit)),
                PressureInputs.NONE.withColdPressure(GaugePressure.psi(12)).withFinalPressure(GaugePressure.psi(psi)));
        return Methods.ASME_IV.size(job).warnings().stream().map(Caution::text).toList();
    }

    @Test
    void en12828OnTheHouseBlock() {
        // e(80 degC) = 0.31 + 3.9e-4 x 80^2 = 2.806 %; p_0 = head + 0.2; p_e = 2.5; reserve 0.5 % of 1000 L; p_a = 1
        Sizing sizing = size(Methods.EN_12828, VesselType.bladder());
        double charge = HEAD + 0.2;
        assertThat(sizing.expansionVolume().in(Units.LITRE)).isCloseTo(28.06, within(1e-9));
        assertThat(sizing.reserveVolume().in(Units.LITRE)).isCloseTo(5, within(1e-9));
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(33.06 * 3.5 / (2.5 - charge), within(1e-9));
        assertThat(sizing.atmosphere()).isEqualTo(AbsolutePressure.bar(1));
    }

    @Test
    void en12828TakesAMixturesOwnDensity() {
        Sizing sizing = Methods.EN_12828.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), TEN, EIGHTY));
        assertThat(sizing.expansionVolume().in(Units.LITRE)).isCloseTo(1000 * FLUID_EXPANSION, within(1e-9));
        assertThatThrownBy(
                        () -> Methods.EN_12828.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), null, EIGHTY)))
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("lowest (fill) temperature");
    }

    @Test
    void raccoltaRHasAFloorAndNoMarginBelowTheSetting() {
        Sizing house = size(Methods.RACCOLTA_R, VesselType.bladder());
        double cold = HEAD + 0.15 + 1;
        assertThat(house.requiredVolume().in(Units.LITRE)).isCloseTo(28.06 / (1 - cold / 4), within(1e-9));
        Sizing low = Methods.RACCOLTA_R.size(Jobs.with(
                job(VesselType.bladder(), TEN, EIGHTY),
                PressureInputs.NONE.withStaticHead(Length.metres(1)).withReliefSetting(GaugePressure.bar(3))));
        assertThat(low.coldPressure().in(Units.BAR)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void massBalanceCountsWhatLeavesTheLoopAtTheVesselsTemperature() {
        // densities 1000/1.005, 1000/1.04 and 1000/1.01 kg/m3; steel grows by 3 x 11.7e-6 x 70
        Sizing sizing = size(Methods.MASS_BALANCE, VesselType.bladder());
        double leaves = 1000 / 1.005 - 1000 / 1.04 * (1 + 3 * 11.7e-6 * 70);
        assertThat(sizing.expansionVolume().in(Units.LITRE)).isCloseTo(leaves * 1.01, within(1e-9));
        assertThat(sizing.expansionVolume())
                .isLessThan(size(Methods.ASHRAE, VesselType.bladder()).expansionVolume());
    }

    @Test
    void gasMayHaveTemperaturesOfItsOwn() {
        GasTemperatures warm = new GasTemperatures(
                Temperature.celsius(20), Temperature.celsius(15), Temperature.celsius(45), Source.given());
        PressureInputs pressures = PressureInputs.NONE
                .withAtmosphere(AbsolutePressure.bar(1))
                .withPreCharge(GaugePressure.bar(1))
                .withColdPressure(GaugePressure.bar(1.2))
                .withFinalPressure(GaugePressure.bar(2.6));
        SizingJob job = Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), pressures);
        Sizing sizing = Methods.MASS_BALANCE.with(warm).size(job);
        double perWater = 1 / (2 * 288.15 / 293.15 / 2.2 - 2 * 318.15 / 293.15 / 3.6);
        assertThat(sizing.requiredVolume().dividedBy(sizing.acceptanceVolume())).isCloseTo(perWater, within(1e-9));
        assertThat(sizing.requiredVolume())
                .isGreaterThan(Methods.MASS_BALANCE.size(job).requiredVolume());
        assertThat(sizing.workings().text(UnitSystem.SI)).contains("p_0 * g_i / p_i - p_0 * g_f / p_f");
        GasTemperatures hot = new GasTemperatures(
                Temperature.celsius(20), Temperature.celsius(20), Temperature.celsius(250), Source.given());
        assertThatThrownBy(() -> Methods.MASS_BALANCE.with(hot).size(job))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("gas temperature");
    }

    /** 2.4 bar abs at 20 degC are 2.56 bar abs at 40 degC, above the 2.5 bar abs of the cold loop. */
    @Test
    void chargeIsHeldAgainstTheColdPressureAtTheTemperatureItHasThere() {
        PressureInputs pressures = PressureInputs.NONE
                .withAtmosphere(AbsolutePressure.bar(1))
                .withPreCharge(GaugePressure.bar(1.4))
                .withColdPressure(GaugePressure.bar(1.5))
                .withFinalPressure(GaugePressure.bar(3));
        SizingJob job = Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), pressures);
        assertThat(Methods.MASS_BALANCE.size(job).requiredVolume().si()).isPositive();
        Temperature forty = Temperature.celsius(40);
        Method warm =
                Methods.MASS_BALANCE.with(new GasTemperatures(Temperature.celsius(20), forty, forty, Source.given()));
        assertThatThrownBy(() -> warm.size(job))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("gas charge");
    }

    /** A rule that counts from 10 degC says so where the loop is filled more than 10 K warmer. */
    @Test
    void anotherFillTemperatureThanTheRulesIsSaid() {
        assertThat(texts(size(Methods.RACCOLTA_R, VesselType.bladder())))
                .noneMatch(text -> text.contains("counts expansion from"));
        assertThat(texts(Methods.RACCOLTA_R.size(job(VesselType.bladder(), Temperature.celsius(30), EIGHTY))))
                .anyMatch(text -> text.contains("counts expansion from"));
    }

    @Test
    void waterRulesWarnForMixtures() {
        Sizing sizing = Methods.RACCOLTA_R.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), TEN, EIGHTY));
        assertThat(sizing.warnings()).anyMatch(caution -> caution.text().contains("test mixture expands more"));
    }

    @ParameterizedTest
    @CsvSource({"29", "131"})
    void europeanLineIsRefusedOutsideItsTable(double celsius) {
        assertThatThrownBy(() -> Methods.RACCOLTA_R.size(Jobs.with(
                        job(VesselType.bladder(), TEN, Temperature.celsius(celsius)),
                        PressureInputs.NONE
                                .withColdPressure(GaugePressure.bar(3))
                                .withFinalPressure(GaugePressure.bar(6)))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("from 30 degC")
                .hasMessageContaining("to 130 degC");
    }

    @Test
    void methodRefusesAKindItDoesNotKnow() {
        assertThatThrownBy(() -> size(Methods.EN_12828, VesselType.open()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("vessel kind open")
                .hasMessageContaining("bladder");
    }

    @Test
    void houseRuleIsOneExpression() {
        Method houseRule = Methods.EN_12828.named("house rule").with(WaterReserve.NONE);
        Sizing sizing = size(houseRule, VesselType.bladder());
        assertThat(sizing.reserveVolume()).isEqualTo(Volume.litres(0));
        assertThat(sizing.requiredVolume())
                .isLessThan(size(Methods.EN_12828, VesselType.bladder()).requiredVolume());
        assertThat(houseRule.toString()).contains("house rule (from EN 12828").contains("reserve: none");
    }

    @Test
    void everyConventionCanBeExchanged() {
        Method ashrae = Methods.ASHRAE;
        Method en = Methods.EN_12828;
        Method same = ashrae.with(en.expansion())
                .with(en.pipeCredit())
                .with(en.reserve())
                .with(en.coldPressure())
                .with(en.finalPressure())
                .with(en.charge(VesselKind.BLADDER))
                .with(en.atmosphere());
        assertThat(size(same, VesselType.bladder()).requiredVolume())
                .isEqualTo(size(en, VesselType.bladder()).requiredVolume());
    }

    @Test
    void methodsAreFoundByName() {
        assertThat(Methods.named(" EN-12828 ")).isSameAs(Methods.EN_12828);
        assertThatThrownBy(() -> Methods.named("en-1234"))
                .hasMessageContaining("\"en-1234\"")
                .hasMessageContaining("one of ashrae, asme-iv, ")
                .hasMessageContaining(", mass-balance;");
    }

    @Test
    void everyMethodHasANameOfItsOwnInLowerCase() {
        assertThat(Methods.all())
                .contains(Methods.ASHRAE, Methods.MASS_BALANCE)
                .extracting(Method::name)
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("[a-z0-9.-]+"));
    }

    @Test
    void acceptanceLimitGovernsWhenItAsksForMore() {
        Sizing limited = size(Methods.ASHRAE, VesselType.diaphragm(VolumeFraction.percent(20)));
        assertThat(limited.governing()).isEqualTo(Governing.ACCEPTANCE_LIMIT);
        assertThat(limited.requiredVolume().in(Units.LITRE))
                .isCloseTo(limited.acceptanceVolume().in(Units.LITRE) / 0.2, within(1e-9));
        Sizing ample = size(Methods.ASHRAE, VesselType.diaphragm(VolumeFraction.percent(60)));
        assertThat(ample.governing()).isEqualTo(Governing.GAS_LAW);
        assertThat(ample.requiredVolume()).isEqualTo(ample.gasLawVolume());
    }

    @Test
    void waterThatIsInTheVesselWhenColdCountsAgainstTheAcceptanceLimit() {
        // charge 2 bar abs, cold 2.5 bar abs: a fifth of the vessel is water when cold, 10 points of 30 are left
        PressureInputs pressures = PressureInputs.NONE
                .withAtmosphere(AbsolutePressure.bar(1))
                .withPreCharge(GaugePressure.bar(1))
                .withColdPressure(GaugePressure.bar(1.5))
                .withFinalPressure(GaugePressure.bar(5));
        SizingJob job = Jobs.with(job(VesselType.diaphragm(VolumeFraction.percent(30)), TEN, EIGHTY), pressures);
        Sizing sizing = Methods.ASHRAE.size(job);
        assertThat(sizing.governing()).isEqualTo(Governing.ACCEPTANCE_LIMIT);
        assertThat(sizing.requiredVolume().in(Units.LITRE))
                .isCloseTo(sizing.acceptanceVolume().in(Units.LITRE) / 0.1, within(1e-6));
        assertThatThrownBy(() -> Methods.ASHRAE.size(
                        Jobs.with(job(VesselType.diaphragm(VolumeFraction.percent(15)), TEN, EIGHTY), pressures)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("acceptance limit 15 vol%")
                .hasMessageContaining("water when cold, 20 vol%");
    }

    @Test
    void chargeBelowVacuumIsRefusedAsItWasGiven() {
        PressureInputs pressures =
                Jobs.HOUSE_BLOCK.withAtmosphere(AbsolutePressure.bar(1)).withPreCharge(GaugePressure.bar(-1.2));
        assertThatThrownBy(() -> Methods.ASHRAE.size(Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), pressures)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("gas charge -1.2 bar")
                .hasMessageContaining("above -1 bar");
    }

    /** A valve 5 m above the vessel, set to 3 bar, lifts at 3.49 bar at the vessel. */
    @Test
    void finalPressureIsHeldAgainstTheSettingAsItStandsAtTheVessel() {
        PressureInputs high = Jobs.HOUSE_BLOCK.withPlace(VesselPlace.AT_VALVE.withValveAbove(Length.metres(5)));
        SizingJob job = job(VesselType.bladder(), TEN, EIGHTY);
        assertThat(Methods.ASHRAE
                        .size(Jobs.with(job, high.withFinalPressure(GaugePressure.bar(3.4))))
                        .finalPressure()
                        .in(Units.BAR))
                .isCloseTo(3.4, within(1e-9));
        assertThatThrownBy(() -> Methods.ASHRAE.size(Jobs.with(job, high.withFinalPressure(GaugePressure.bar(3.6)))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("relief setting");
    }

    @Test
    void missingPressuresAreNamed() {
        SizingJob job = job(VesselType.bladder(), TEN, EIGHTY);
        assertThatThrownBy(() -> Methods.ASHRAE.size(Jobs.with(job, PressureInputs.NONE)))
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("static head or cold pressure");
        assertThatThrownBy(() ->
                        Methods.ASHRAE.size(Jobs.with(job, PressureInputs.NONE.withColdPressure(GaugePressure.bar(1)))))
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("relief setting or final pressure");
    }

    @Test
    void finalPressureAboveTheReliefSettingIsRefused() {
        PressureInputs pressures = Jobs.HOUSE_BLOCK.withFinalPressure(GaugePressure.bar(3.2));
        assertThatThrownBy(() -> Methods.ASHRAE.size(Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), pressures)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("final pressure 3.2 bar")
                .hasMessageContaining("at the vessel, 3 bar");
    }

    @Test
    void loopThatWouldBoilIsRefused() {
        PressureInputs pressures =
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(0.2)).withFinalPressure(GaugePressure.bar(0.5));
        assertThatThrownBy(() -> Methods.EN_12828.size(
                        Jobs.with(job(VesselType.bladder(), TEN, Temperature.celsius(120)), pressures)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("120 degC")
                .hasMessageContaining("below boiling");
    }

    @Test
    void loopWithNothingToTakeUpIsRefused() {
        Loop loop = Loop.withContents(Volume.litres(1000))
                .pipe(new PipeMaterial("soft", LinearExpansion.perKelvin(2e-4), Source.given()))
                .filledWith(TestFluid.WATER);
        SizingJob job =
                new SizingJob(loop, VesselType.bladder(), LoopTemperatures.between(TEN, EIGHTY), Jobs.HOUSE_BLOCK);
        assertThatThrownBy(() -> Methods.ASHRAE.size(job))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("net expansion");
    }

    @Test
    void warningWhenTheTopMayFlash() {
        // at 110 degC the test water boils at 1.43 bar; at the top there is 4 psi above the air when cold
        SizingJob hot = job(VesselType.bladder(), TEN, Temperature.celsius(110));
        SizingJob wide = Jobs.with(hot, Jobs.HOUSE_BLOCK.withReliefSetting(GaugePressure.bar(6)));
        assertThat(texts(Methods.ASHRAE.size(wide))).anyMatch(text -> text.contains("may flash to vapour"));
        assertThat(texts(size(Methods.ASHRAE, VesselType.bladder()))).noneMatch(text -> text.contains("flash"));
    }

    @Test
    void marginOfTheValvesInstructionsBeatsEveryRule() {
        PressureInputs own = Jobs.HOUSE_BLOCK.withReliefMargin(PressureDifference.bar(0.4));
        for (Method method : List.of(Methods.ASHRAE, Methods.EN_12828, Methods.RACCOLTA_R)) {
            Sizing sizing = method.size(Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), own));
            assertThat(sizing.finalPressure().in(Units.BAR)).isCloseTo(2.6, within(1e-9));
            assertThat(sizing.workings().text(UnitSystem.SI)).contains("3 bar - 0.4 bar");
        }
    }

    @Test
    void valvePumpAndWeakestPartAreTakenToTheVessel() {
        // a component rated 1034 kPa, 255.06 kPa of pump head between it and the valve, as in a project sheet after the
        // handbook
        VesselPlace place = VesselPlace.AT_VALVE
                .withValveAbove(Length.metres(5))
                .withPumpAtValve(PressureDifference.bar(0.3))
                .withPumpAtTop(PressureDifference.bar(-0.2))
                .withWeakest(new VesselPlace.WeakestPart(
                        GaugePressure.kilopascals(1034), Length.metres(0), PressureDifference.kilopascals(255.06)));
        Sizing byValve = Methods.RACCOLTA_R.size(
                Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), Jobs.HOUSE_BLOCK.withPlace(place)));
        assertThat(byValve.finalPressure().in(Units.BAR)).isCloseTo(3 + 0.4903325 - 0.3, within(1e-9));
        assertThat(byValve.coldPressure().in(Units.BAR)).isCloseTo(HEAD + 0.15 + 0.2, within(1e-9));
        Sizing byPart = Methods.RACCOLTA_R.size(Jobs.with(
                job(VesselType.bladder(), TEN, EIGHTY),
                Jobs.HOUSE_BLOCK.withReliefSetting(null).withPlace(place)));
        assertThat(byPart.finalPressure().in(Units.KILOPASCAL)).isCloseTo(778.94, within(1e-6));
        assertThat(byPart.workings().text(UnitSystem.SI)).contains("p_weak + p_a");
    }

    @Test
    void mixturesGetTheirOwnCautions() {
        Sizing mixture = Methods.ASHRAE.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), TEN, EIGHTY));
        assertThat(mixture.cautions()).anyMatch(caution -> caution.text().contains("ethylene glycol"));
        assertThat(size(Methods.ASHRAE, VesselType.bladder()).cautions())
                .noneMatch(caution -> caution.text().contains("glycol"));
    }

    @Test
    void temperaturesInTheWrongOrderAreRefused() {
        assertThatThrownBy(() -> job(VesselType.bladder(), EIGHTY, TEN))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("highest temperature 10 degC (50 degF)")
                .hasMessageContaining("lowest temperature 80 degC (176 degF)");
    }

    @Test
    void warningsSayWhatWasNotUsed() {
        assertThat(texts(size(Methods.EN_12828, VesselType.diaphragm())))
                .anyMatch(text -> text.contains("acceptance limit"))
                .anyMatch(text -> text.contains("takes no pipe credit"));
        Loop unknownPipe =
                Loop.withContents(Volume.litres(1000)).pipeNotStated().filledWith(TestFluid.WATER);
        assertThat(texts(Methods.ASHRAE.size(new SizingJob(
                        unknownPipe, VesselType.bladder(), LoopTemperatures.between(TEN, EIGHTY), Jobs.HOUSE_BLOCK))))
                .anyMatch(text -> text.contains("no pipe credit was taken"));
        Loop copper = Loop.withContents(Volume.litres(1000)).copper().filledWith(TestFluid.WATER);
        assertThat(texts(Methods.ASME_IV.size(new SizingJob(
                        copper, VesselType.bladder(), LoopTemperatures.between(TEN, EIGHTY), Jobs.HOUSE_BLOCK))))
                .anyMatch(text -> text.contains("net of steel pipe"));
    }

    @Test
    void warningWhenTheColdPressureDoesNotReachTheTop() {
        PressureInputs pressures = Jobs.HOUSE_BLOCK.withColdPressure(GaugePressure.bar(0.8));
        assertThat(texts(Methods.ASHRAE.size(Jobs.with(job(VesselType.bladder(), TEN, EIGHTY), pressures))))
                .anyMatch(text -> text.contains("under vacuum"));
        assertThat(texts(Methods.ASHRAE.size(Jobs.with(
                        job(VesselType.bladder(), TEN, EIGHTY),
                        Jobs.HOUSE_BLOCK.withColdPressure(GaugePressure.bar(1.2))))))
                .noneMatch(text -> text.contains("under vacuum"));
    }

    private static List<String> texts(Sizing sizing) {
        return sizing.warnings().stream().map(Caution::text).toList();
    }

    private static Sizing size(Method method, VesselType vessel) {
        return method.size(job(vessel, TEN, EIGHTY));
    }

    private static SizingJob job(VesselType vessel, @Nullable Temperature cold, Temperature hot) {
        return Jobs.steel(TestFluid.WATER, vessel, cold, hot);
    }
}
