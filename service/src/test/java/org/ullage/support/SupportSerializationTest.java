package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.loop.PipeStandard;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Volume;

/** What the package gives its users can be stored and comes back equal. */
class SupportSerializationTest {

    static Stream<Serializable> values() {
        Length metre = Length.metres(1);
        Mass mass = Mass.kilograms(50);
        HandPosition hands = HandPosition.ahead(Length.metres(0.3), metre);
        LiftLimit lift = LiftLimit.ofVessel(hands, hands);
        ShellEstimate shell = new ShellEstimate(Volume.litres(50), GaugePressure.bar(6));
        VesselWeight weight = new VesselWeight(Volume.litres(50), shell.shellMass(), ContainedFluid.WATER);
        StubSection section = StubSection.threaded(PipeStandard.ASME_B36_10_SCH_80.size("1"));
        SimpleBeam beam = new SimpleBeam(Length.metres(2), List.of(PointLoad.of(mass, metre)));
        AnchorStrength strength = new AnchorStrength(Force.newtons(2000), Force.newtons(1500));
        return Stream.of(
                shell,
                weight,
                weight.workings(),
                PipeStub.of(section, mass, metre, AllowableStress.STEEL),
                new Bracket(mass, metre, metre, 2, 4, Force.newtons(0), strength),
                new BeamSpan(BeamSection.CHANNEL.slotted(), metre, BeamCase.SIMPLE_CENTRE),
                new Rack(beam, 2, BeamSection.CHANNEL, DeflectionLimit.SPAN_180),
                HangerRod.ROD_1_2.check(Force.newtons(100), RodLoads.LOWEST),
                HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "2"),
                new SeismicForce(Asce705To716.vessel(0.5), mass, 1, 1),
                new SeismicForce(new Asce722(1, 1, 1, 1.5), mass, 1, 1.5),
                SeismicExemption.asce705(SeismicCategory.D, 1, true, metre, mass),
                lift,
                new LiftingFilter(LiftingFilter.Zone.ELBOW_TO_KNUCKLE, true, LiftingFilter.People.MEN),
                VesselRemoval.by(weight, lift));
    }

    @ParameterizedTest
    @MethodSource("values")
    void comesBackEqual(Serializable value) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(value);
        }
    }
}
