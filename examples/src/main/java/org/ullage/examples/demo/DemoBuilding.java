package org.ullage.examples.demo;

import org.ullage.charge.ChargeJob;
import org.ullage.charge.ChargePlan;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Sizing;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.selection.Objective;
import org.ullage.selection.SelectionJob;
import org.ullage.sizing.VesselSizing;
import org.ullage.support.AnchorStrength;
import org.ullage.support.Bracket;
import org.ullage.support.HandPosition;
import org.ullage.support.LiftLimit;
import org.ullage.support.VesselRemoval;
import org.ullage.support.VesselWeight;
import org.ullage.vessel.VesselType;

/** The invented building: a block of flats on a hill with a boiler in the cellar and radiators on three storeys. */
final class DemoBuilding {

    static final String NAME = "Quillbrook Yard, twelve flats on three storeys (an invented building)";

    static final Length ALTITUDE = Length.metres(420);

    private static final Volume CONTENTS = Volume.litres(1150);
    private static final LoopTemperatures TEMPERATURES = LoopTemperatures.between(
                    Temperature.celsius(10), Temperature.celsius(80))
            .withMean(Temperature.celsius(70))
            .withSafety(Temperature.celsius(95));
    private static final Length STATIC_HEAD = Length.metres(9.5);
    private static final GaugePressure RELIEF_SETTING = GaugePressure.bar(3);

    private DemoBuilding() {}

    /** The job with all that is known, ready for a method. */
    static VesselSizing.MethodStep ready() {
        return VesselSizing.forLoop(Loop.withContents(CONTENTS).steel().filledWith(Water.IAPWS_IF97))
                .temperatures(TEMPERATURES)
                .vessel(VesselType.diaphragm())
                .staticHead(STATIC_HEAD)
                .reliefValve(RELIEF_SETTING)
                .atmosphere(StandardAtmosphere.at(ALTITUDE));
    }

    /** The vessels hang on the return, the coldest point of the loop, which is no hotter than this. */
    static SelectionJob choice(Sizing sizing) {
        return SelectionJob.of(sizing).ratedFor(Temperature.celsius(60)).by(Objective.CHEAPEST, Objective.FEWEST);
    }

    /** A cool day in the cellar; the vessels came with 1.5 bar from the works; filled so that a little water stays in them when cold. */
    static ChargePlan charge(Sizing sizing, Volume nominal) {
        Temperature air = Temperature.celsius(12);
        return ChargeJob.of(sizing, nominal, air, Temperature.celsius(14))
                .found(GaugePressure.bar(1.5), air)
                .filledTo(GaugePressure.bar(1.2))
                .plan();
    }

    /** A bracket with two anchors above and two below, of which the maker allows 1.2 kN in pull and in shear. */
    static Bracket bracket(VesselWeight weight) {
        return new Bracket(
                weight.waterlogged(),
                Length.millimetres(260),
                Length.millimetres(300),
                2,
                4,
                Force.newtons(0),
                new AnchorStrength(Force.newtons(1200), Force.newtons(1200)));
    }

    /** From the bracket down to a trolley, close to the body. */
    static VesselRemoval removal(VesselWeight weight) {
        Length reach = Length.metres(0.3);
        return VesselRemoval.by(
                weight,
                LiftLimit.ofVessel(
                        HandPosition.ahead(reach, Length.metres(1.3)), HandPosition.ahead(reach, Length.metres(0.6))));
    }
}
