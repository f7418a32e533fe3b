package org.ullage.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

class SizingSweepTest {

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));
    private static final SweepAxis HOT =
            SweepAxis.hotTemperature(List.of(Temperature.celsius(60), Temperature.celsius(80)));
    private static final SweepAxis HEAD =
            SweepAxis.staticHead(List.of(Length.metres(5), Length.metres(10), Length.metres(40)));
    private static final SweepAxis FLUIDS = SweepAxis.fluids(List.of(TestFluid.WATER, TestFluid.MIXTURE));

    @Test
    void everyCellIsTheMethodsOwnAnswerOrItsRefusal() {
        SizingSweep sweep = SizingSweep.of(Methods.ASHRAE, JOB, HOT, HEAD);
        assertThat(sweep.requiredVolume(1, 1))
                .contains(Methods.ASHRAE.size(JOB).requiredVolume())
                .contains(sweep.sizing(1, 1).requiredVolume());
        assertThat(sweep.requiredVolume(0, 1).orElseThrow())
                .isLessThan(sweep.requiredVolume(1, 1).orElseThrow());
        assertThat(sweep.requiredVolume(0, 2)).isEmpty();
        assertThat(sweep.refusal(0, 2)).isPresent();
        assertThat(sweep.refusal(0, 0)).isEmpty();
        assertThat(sweep.refused()).isEqualTo(2);
    }

    @Test
    void fluidsMayRunEitherWay() {
        SizingSweep down = SizingSweep.of(Methods.ASHRAE, JOB, FLUIDS, HEAD);
        SizingSweep across = SizingSweep.of(Methods.ASHRAE, JOB, HEAD, FLUIDS);
        for (int fluid = 0; fluid < 2; fluid++) {
            for (int head = 0; head < 3; head++) {
                assertThat(down.requiredVolume(fluid, head)).isEqualTo(across.requiredVolume(head, fluid));
                assertThat(down.refusal(fluid, head)).isEqualTo(across.refusal(head, fluid));
            }
        }
        assertThat(across.sizing(0, 1).job().loop().fluid()).isEqualTo(TestFluid.MIXTURE);
        assertThat(FLUIDS.labels(UnitSystem.SI)).hasSize(2);
        assertThat(FLUIDS.words()).isEqualTo("fluid");
    }

    @Test
    void axesHaveTheirWords() {
        assertThat(HOT.words()).isEqualTo("hot temperature");
        assertThat(HOT.labels(UnitSystem.IP)).containsExactly("140 degF", "176 degF");
    }

    @Test
    void evenStepsKeepBothEnds() {
        List<Volume> volumes = SweepAxis.evenly(Volume.litres(500), Volume.litres(2000), 4, Volume::ofSi);
        assertThat(volumes)
                .containsExactly(Volume.litres(500), Volume.litres(1000), Volume.litres(1500), Volume.litres(2000));
        assertThatThrownBy(() -> SweepAxis.evenly(Volume.litres(1), Volume.litres(2), 1, Volume::ofSi))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("number of values 1");
    }

    @Test
    void everyInputHasItsAxis() {
        List<GaugePressure> settings = List.of(GaugePressure.bar(3), GaugePressure.bar(4));
        SizingSweep sweep = SizingSweep.of(
                Methods.ASHRAE,
                JOB,
                SweepAxis.contents(List.of(Volume.litres(1000))),
                SweepAxis.reliefSetting(settings));
        assertThat(sweep.requiredVolume(0, 1).orElseThrow())
                .isLessThan(sweep.requiredVolume(0, 0).orElseThrow());
        SizingSweep stated = SizingSweep.of(
                Methods.ASHRAE,
                JOB,
                SweepAxis.coldPressure(List.of(GaugePressure.bar(1.2))),
                SweepAxis.charge(List.of(GaugePressure.bar(1), GaugePressure.bar(1.2), GaugePressure.bar(1.3))));
        assertThat(stated.requiredVolume(0, 1).orElseThrow())
                .isLessThan(stated.requiredVolume(0, 0).orElseThrow());
        assertThat(stated.refusal(0, 2)).isPresent();
        SizingSweep last = SizingSweep.of(
                Methods.ASHRAE,
                JOB,
                SweepAxis.coldTemperature(List.of(Temperature.celsius(5), Temperature.celsius(20))),
                SweepAxis.finalPressure(List.of(GaugePressure.bar(2.5), GaugePressure.bar(3.5))));
        assertThat(last.requiredVolume(1, 0).orElseThrow())
                .isLessThan(last.requiredVolume(0, 0).orElseThrow());
        assertThat(last.refusal(0, 1)).isPresent();
    }

    @Test
    void whatHasNoEffectIsRefused() {
        SweepAxis cold = SweepAxis.coldPressure(List.of(GaugePressure.bar(1)));
        SizingJob open =
                Jobs.steel(TestFluid.WATER, VesselType.open(), Temperature.celsius(10), Temperature.celsius(80));
        refuses(JOB, HOT, HOT, "twice");
        refuses(JOB, HEAD, cold, "vary the cold pressure");
        refuses(JOB, cold, HEAD, "vary the cold pressure");
        refuses(Jobs.with(JOB, Jobs.HOUSE_BLOCK.withColdPressure(GaugePressure.bar(1))), HOT, HEAD, "static head");
        refuses(open, HOT, HEAD, "open tank");
    }

    private static void refuses(SizingJob job, SweepAxis down, SweepAxis across, String words) {
        assertThatThrownBy(() -> SizingSweep.of(Methods.ASHRAE, job, down, across))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining(words);
    }

    @Test
    void axesNeedValuesAndCellsMustExist() {
        assertThatThrownBy(() -> SweepAxis.contents(List.of())).hasMessageContaining("one or more");
        assertThatThrownBy(() -> SweepAxis.fluids(List.of())).hasMessageContaining("one or more");
        SizingSweep sweep = SizingSweep.of(Methods.ASHRAE, JOB, HOT, HEAD);
        assertThatThrownBy(() -> sweep.requiredVolume(2, 0)).hasMessageContaining("row of the sweep 2");
        assertThatThrownBy(() -> sweep.sizing(0, 3)).hasMessageContaining("column of the sweep 3");
        assertThatThrownBy(() -> sweep.refusal(0, -1)).hasMessageContaining("column of the sweep -1");
    }
}
