package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
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
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

class SizingRecordTest {

    private static LoopFluid fluid(String name) {
        return List.of(TestFluid.WATER, TestFluid.MIXTURE).stream()
                .filter(fluid -> fluid.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static SizingJob everything() {
        return new SizingJob(
                Loop.withContents(Volume.gallons(3000))
                        .pipe(new PipeMaterial("PE-X", LinearExpansion.perKelvin(1.8e-4), Source.given()))
                        .filledWith(TestFluid.MIXTURE)
                        .stagnating(new StagnationContents(Volume.litres(10), Volume.litres(4))),
                VesselType.diaphragm(VolumeFraction.percent(45)),
                LoopTemperatures.between(Temperature.fahrenheit(40), Temperature.celsius(80))
                        .withMean(Temperature.celsius(70))
                        .withSafety(Temperature.celsius(95)),
                PressureInputs.NONE
                        .withColdPressure(GaugePressure.psi(12))
                        .withFinalPressure(GaugePressure.bar(2.5))
                        .withStaticHead(Length.feet(20))
                        .withReliefSetting(GaugePressure.bar(3))
                        .withPreCharge(GaugePressure.bar(0.7))
                        .withAtmosphere(AbsolutePressure.kilopascals(95))
                        .withReliefMargin(PressureDifference.bar(0.35))
                        .withPlace(VesselPlace.AT_VALVE
                                .withValveAbove(Length.metres(2))
                                .withPumpAtTop(PressureDifference.bar(-0.1))
                                .withPumpAtValve(PressureDifference.bar(0.2))
                                .withWeakest(new VesselPlace.WeakestPart(
                                        GaugePressure.bar(4), Length.metres(-3), PressureDifference.bar(0.3)))));
    }

    @Test
    void nothingOfAJobIsLost() {
        SizingJob job = everything();
        JobRecord record = JobRecord.of(job, Methods.EN_12828, "test mixture");
        JobRecord read = Books.read(Books.json(record), JobRecord.class);
        assertThat(read).isEqualTo(record);
        SizingJob back = read.job(SizingRecordTest::fluid);
        assertThat(back.pressures()).isEqualTo(job.pressures());
        assertThat(back.temperatures()).isEqualTo(job.temperatures());
        assertThat(back.vessel()).isEqualTo(job.vessel());
        assertThat(back.loop().contents()).isEqualTo(job.loop().contents());
        assertThat(back.loop().pipe()).isEqualTo(job.loop().pipe());
        assertThat(back.loop().fluid()).isEqualTo(job.loop().fluid());
        assertThat(back.loop().stagnation()).isEqualTo(job.loop().stagnation());
        assertThat(read.sizingMethod()).isSameAs(Methods.EN_12828);
    }

    static List<Method> methods() {
        return Jobs.methods();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void theSameJobGivesTheSameAnswer(Method method) {
        VesselType vessel = method.kinds().contains(VesselKind.BLADDER) ? VesselType.bladder() : VesselType.open();
        SizingJob job = Jobs.steel(TestFluid.WATER, vessel, Temperature.celsius(10), Temperature.celsius(80));
        // Low enough for the rule that is made for one cold pressure.
        Sizing sizing = method.size(Jobs.with(job, Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(8))));
        SizingRecord record = SizingRecord.of(sizing);
        SizingRecord read = Books.read(Books.json(record), SizingRecord.class);
        assertThat(read).isEqualTo(record);
        assertThat(Books.serialised(record)).isEqualTo(record);
        Sizing again = read.job().sizingMethod().size(read.job().job(SizingRecordTest::fluid));
        assertThat(SizingRecord.of(again)).isEqualTo(record);
        assertThat(read.answer().requiredVolume()).isEqualTo(sizing.requiredVolume());
        assertThat(read.answer().warnings()).extracting(WarningRecord::caution).isEqualTo(sizing.warnings());
    }

    @Test
    void aJobCanBeWrittenByHand() {
        JobRecord job = Books.read(
                "{\"method\":\"ashrae\",\"vessel\":\"diaphragm\",\"contents\":\"3000 gal\",\"pipe\":\"steel\",\"fluid\":\"test water\","
                        + "\"cold\":\"40 degF\",\"hot\":\"180 degF\",\"coldPressure\":\"10 psi\",\"finalPressure\":\"25 psi\"}",
                JobRecord.class);
        SizingJob read = job.job(SizingRecordTest::fluid);
        assertThat(read.loop().pipe()).isEqualTo(PipeMaterial.STEEL);
        assertThat(read.vessel()).isEqualTo(VesselType.diaphragm());
        assertThat(read.pressures().place()).isEqualTo(VesselPlace.AT_VALVE);
        assertThat(job.sizingMethod().size(read).requiredVolume().si()).isPositive();
    }

    @Test
    void rigidPipeIsWrittenByItsShortName() {
        SizingJob steel =
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));
        Loop loop = Loop.withContents(Volume.litres(1000)).rigid().filledWith(TestFluid.WATER);
        SizingJob rigid = new SizingJob(loop, steel.vessel(), steel.temperatures(), steel.pressures());
        JobRecord record = JobRecord.of(rigid, Methods.ASHRAE, "test water");
        assertThat(Books.json(record)).contains("\"pipe\":\"none\"").doesNotContain("linearExpansion");
        assertThat(record.job(SizingRecordTest::fluid).loop().pipe()).isEqualTo(PipeMaterial.RIGID);
    }

    @Test
    void anotherModelOfTheFluidIsRefused() {
        JobRecord job = JobRecord.of(
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)),
                Methods.ASHRAE,
                "test water");
        JobRecord changed = Books.read(Books.json(job).replace("straight line", "bent line"), JobRecord.class);
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> changed.job(SizingRecordTest::fluid))
                .withMessageContaining("model of the fluid \"straight line\"")
                .withMessageContaining("\"bent line\" as recorded");
    }

    @Test
    void anUnknownPipeOrMethodIsRefused() {
        String least =
                "{\"method\":\"m\",\"vessel\":\"open\",\"contents\":\"3 L\",\"pipe\":\"lead\",\"fluid\":\"test water\"}";
        JobRecord job = Books.read(least, JobRecord.class);
        assertThatExceptionOfType(MissingInputException.class)
                .isThrownBy(() -> job.job(SizingRecordTest::fluid))
                .withMessageContaining("linear expansion of pipe \"lead\"")
                .withMessageContaining("copper, none, steel");
        assertThatExceptionOfType(OutOfRangeException.class).isThrownBy(job::sizingMethod);
        assertThatThrownBy(() -> Books.read("{\"method\":\"m\"}", JobRecord.class))
                .hasRootCauseInstanceOf(MissingInputException.class)
                .hasStackTraceContaining("kind of vessel is missing");
    }

    @Test
    void saysWhatFileItIs() {
        Sizing sizing = Methods.ASHRAE.size(
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)));
        String json = Books.json(SizingRecord.of(sizing));
        assertThat(json)
                .startsWith(
                        "{\"schema\":\"ullage-sizing\",\"version\":1,\"job\":{\"method\":\"ashrae\",\"vessel\":\"bladder\"");
        assertThatThrownBy(() -> Books.read(json.replace("ullage-sizing", "ullage-record"), SizingRecord.class))
                .hasRootCauseInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Books.read(json.replace("\"version\":1", "\"version\":9"), SizingRecord.class))
                .hasStackTraceContaining("newer release");
    }
}
