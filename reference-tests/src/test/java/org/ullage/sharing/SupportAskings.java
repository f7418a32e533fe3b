package org.ullage.sharing;

import java.util.List;
import org.ullage.loop.PipeStandard;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.support.AllowableStress;
import org.ullage.support.AnchorStrength;
import org.ullage.support.Asce705To716;
import org.ullage.support.BeamSection;
import org.ullage.support.Bracket;
import org.ullage.support.ContainedFluid;
import org.ullage.support.DeflectionLimit;
import org.ullage.support.HandPosition;
import org.ullage.support.HangerRod;
import org.ullage.support.HangerSpacing;
import org.ullage.support.LiftLimit;
import org.ullage.support.PipeStub;
import org.ullage.support.PointLoad;
import org.ullage.support.Rack;
import org.ullage.support.RodLoads;
import org.ullage.support.SeismicForce;
import org.ullage.support.ShellEstimate;
import org.ullage.support.SimpleBeam;
import org.ullage.support.SpacedPipe;
import org.ullage.support.SpacingRule;
import org.ullage.support.StubSection;
import org.ullage.support.VesselRemoval;
import org.ullage.support.VesselWeight;

/** What holds a full vessel, and how it comes down. */
final class SupportAskings {

    private static final Length METRE = Length.metres(1);
    private static final Mass MASS = Mass.kilograms(50);
    private static final ShellEstimate SHELL = new ShellEstimate(Volume.litres(50), GaugePressure.bar(6));
    private static final VesselWeight WEIGHT =
            new VesselWeight(Volume.litres(50), SHELL.shellMass(), ContainedFluid.WATER);
    private static final HandPosition HANDS = HandPosition.ahead(Length.metres(0.3), METRE);
    private static final AnchorStrength ANCHOR = new AnchorStrength(Force.newtons(2000), Force.newtons(1500));
    private static final SimpleBeam BEAM = new SimpleBeam(Length.metres(2), List.of(PointLoad.of(MASS, METRE)));

    private SupportAskings() {}

    static List<Asking> all() {
        return List.of(
                new Asking("shell", () -> SHELL),
                new Asking("weight", () -> WEIGHT),
                new Asking("text of the weight", () -> WEIGHT.text(UnitSystem.SI)),
                new Asking("workings of the weight", WEIGHT::workings),
                new Asking("stub", SupportAskings::stub),
                new Asking("workings of the stub", () -> stub().workings()),
                new Asking("bracket", SupportAskings::bracket),
                new Asking("workings of the bracket", () -> bracket().workings()),
                new Asking("rack", SupportAskings::rack),
                new Asking("workings of the rack", () -> rack().workings()),
                new Asking("rod", () -> HangerRod.ROD_1_2.check(Force.newtons(100), RodLoads.LOWEST)),
                new Asking("spacing", () -> HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "2")),
                new Asking("seismic force", () -> new SeismicForce(Asce705To716.vessel(0.5), MASS, 1, 1)),
                new Asking("removal", () -> VesselRemoval.by(WEIGHT, LiftLimit.ofVessel(HANDS, HANDS))));
    }

    private static PipeStub stub() {
        return PipeStub.of(
                StubSection.threaded(PipeStandard.ASME_B36_10_SCH_80.size("1")), MASS, METRE, AllowableStress.STEEL);
    }

    private static Bracket bracket() {
        return new Bracket(MASS, METRE, METRE, 2, 4, Force.newtons(0), ANCHOR);
    }

    private static Rack rack() {
        return new Rack(BEAM, 2, BeamSection.CHANNEL, DeflectionLimit.SPAN_180);
    }
}
