package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.ullage.method.Sizing;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

class LiftChanceTest {

    private static final int MANY = 100_000;

    @Test
    void certainInputsLiftOrDoNot() {
        Sizing sizing = Methods.ASHRAE.size(UncertainJobs.JOB);
        Volume justEnough = toTheSetting(sizing);
        SizingUncertainty certain = UncertainJobs.certain();
        assertThat(certain.liftChance(justEnough.times(1.001), MANY, 1).chance())
                .isZero();
        assertThat(certain.liftChance(justEnough.times(0.999), MANY, 1).chance())
                .isEqualTo(1);
    }

    /** The vessel that reaches the relief setting itself, without the method's margin. */
    private static Volume toTheSetting(Sizing sizing) {
        AbsolutePressure air = sizing.atmosphere();
        return GasLaw.nominalVolume(
                sizing.acceptanceVolume(),
                sizing.preCharge().absolute(air),
                sizing.coldPressure().absolute(air),
                GaugePressure.bar(3).absolute(air));
    }

    /** Only the contents uncertain: lifts where they are above what the vessel was made for. */
    @Test
    void chanceIsThatOfTheContentsBeingLarger() {
        SizingUncertainty question =
                UncertainJobs.certain().contents(Uncertain.normal(Volume.litres(1000), Volume.litres(50)));
        Volume enoughFor1060 = toTheSetting(question.centre()).times(1.06);
        LiftChance chance = question.liftChance(enoughFor1060, MANY, 1);
        double expected = 1 - new NormalDistribution(1000, 50).cumulativeProbability(1060);
        assertThat(chance.chance()).isCloseTo(expected, within(4 * chance.standardError()));
        assertThat(chance.standardError()).isCloseTo(Math.sqrt(expected * (1 - expected) / MANY), within(1e-4));
    }

    /** Only the opening pressure uncertain: lifts where it is below what the vessel reaches. */
    @Test
    void chanceIsThatOfTheValveOpeningEarlier() {
        SizingUncertainty question = SizingUncertainty.of(Methods.ASHRAE, UncertainJobs.JOB)
                .reliefSetting(Uncertain.uniform(GaugePressure.bar(2.9), GaugePressure.bar(3.1)));
        Sizing sizing = question.centre();
        AbsolutePressure air = sizing.atmosphere();
        Volume reaches295 = GasLaw.nominalVolume(
                sizing.acceptanceVolume(),
                sizing.preCharge().absolute(air),
                sizing.coldPressure().absolute(air),
                GaugePressure.bar(2.95).absolute(air));
        LiftChance chance = question.liftChance(reaches295, MANY, 1);
        assertThat(chance.chance()).isCloseTo(0.25, within(4 * chance.standardError()));
    }

    @Test
    void aLargerVesselNeverLiftsMoreOften() {
        double before = 1;
        for (double litres = 20; litres < 200; litres += 15) {
            double chance = UncertainJobs.withTemperatures()
                    .liftChance(Volume.litres(litres), 5000, 1)
                    .chance();
            assertThat(chance).isLessThanOrEqualTo(before);
            before = chance;
        }
        assertThat(before).isLessThan(0.01);
    }

    @Test
    void aVesselThatHoldsTheWaterAtNoPressureLifts() {
        LiftChance chance = UncertainJobs.usual().liftChance(Volume.litres(10), 5000, 1);
        assertThat(chance.chance()).isEqualTo(1);
        assertThat(chance.headroom().greatest()).isLessThan(0);
    }

    @Test
    void refusedDrawsMakeARange() {
        SizingUncertainty question =
                UncertainJobs.certain().charge(Uncertain.normal(GaugePressure.bar(1.15), PressureDifference.bar(0.05)));
        LiftChance chance = question.liftChance(Volume.litres(200), 20_000, 1);
        assertThat(chance.chance()).isZero();
        assertThat(chance.chanceAtMost()).isCloseTo(0.1587, within(0.01));
        assertThat(chance.text(UnitSystem.SI)).contains("at most", "gas charge", "seed 1");
        assertThat(chance.cautions())
                .hasSizeGreaterThan(chance.centre().cautions().size());
    }

    @Test
    void refusesAVesselOfNoSize() {
        assertThatThrownBy(() -> UncertainJobs.usual().liftChance(Volume.litres(0), 5000, 1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("nominal volume");
    }
}
