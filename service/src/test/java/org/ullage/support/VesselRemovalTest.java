package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.support.LiftingFilter.People;
import org.ullage.support.LiftingFilter.Zone;

class VesselRemovalTest {

    private static final LiftLimit OVERHEAD = LiftLimit.ofVessel(
            HandPosition.ahead(Length.metres(0.45), Length.metres(1.5)),
            HandPosition.ahead(Length.metres(0.45), Length.metres(0)));

    private static VesselWeight vessel(double litres) {
        ShellMass shell = new ShellEstimate(Volume.litres(litres), GaugePressure.bar(3)).shellMass();
        return new VesselWeight(Volume.litres(litres), shell, ContainedFluid.WATER);
    }

    /** About 21 kg waterlogged: below 23 and 25 kg, and still three times too heavy for a real overhead lift. */
    @Test
    void eighteenLitresPassTheIdealLimitsButNotOverhead() {
        LiftingFilter ideal = new LiftingFilter(Zone.ELBOW_TO_KNUCKLE, false, People.MEN);
        assertThat(VesselRemoval.by(vessel(18), ideal).advice()).isEqualTo(VesselRemoval.Advice.ONE_PERSON);
        VesselRemoval real = VesselRemoval.by(vessel(18), OVERHEAD);
        assertThat(real.advice()).isEqualTo(VesselRemoval.Advice.DRAIN_FIRST);
        assertThat(real.waterlogged().use()).isBetween(2.7, 2.9);
        assertThat(real.text(UnitSystem.SI))
                .contains("waterlogged: REFUSED", "drained: passes", "drain it and weigh it");
    }

    @Test
    void someAreTooHeavyEvenDrained() {
        VesselRemoval heavy = VesselRemoval.by(vessel(200), OVERHEAD);
        assertThat(heavy.advice()).isEqualTo(VesselRemoval.Advice.LIFTING_GEAR);
        assertThat(heavy.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("gas side"));
        assertThat(VesselRemoval.by(vessel(2), OVERHEAD).advice()).isEqualTo(VesselRemoval.Advice.ONE_PERSON);
        assertThat(heavy.limit()).isLessThan(Mass.kilograms(23));
    }
}
