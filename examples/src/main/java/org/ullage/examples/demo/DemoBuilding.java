package org.ullage.examples.demo;

import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.sizing.VesselSizing;
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
}
