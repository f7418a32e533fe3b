package org.ullage.sharing;

import java.math.BigDecimal;
import java.util.List;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.VolumeRange;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.ReliefValve;
import org.ullage.pressure.VesselPlace;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.selection.Catalogue;
import org.ullage.selection.CatalogueItem;
import org.ullage.uncertainty.SizingUncertainty;
import org.ullage.uncertainty.Uncertain;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** The invented site whose one set of instances all threads share. */
final class QuillbrookYard {

    static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    static final Temperature COLD = Temperature.celsius(10);
    static final Temperature HOT = Temperature.celsius(80);
    static final ReliefValve RELIEF = ReliefValve.iso4126(GaugePressure.bar(3));

    static final PressureInputs PRESSURES = PressureInputs.NONE
            .withStaticHead(Length.metres(9.5))
            .withReliefSetting(GaugePressure.bar(3))
            .withAtmosphere(AIR);

    static final SizingJob RADIATORS = job(loop(1150, "water/if97"), VesselType.bladder());
    static final SizingJob SNOW_MELTING = job(loop(640, "propylene glycol 30 vol%"), VesselType.diaphragm());
    static final SizingJob GLASSHOUSE = job(loop(2400, "water"), VesselType.open());

    static final Sizing SIZING = Methods.EN_12828.size(RADIATORS);

    /** The same with the relief valve 2 m above the vessel. */
    static final Sizing VALVE_ABOVE = Methods.EN_12828.size(new SizingJob(
            RADIATORS.loop(),
            RADIATORS.vessel(),
            RADIATORS.temperatures(),
            PRESSURES.withPlace(VesselPlace.AT_VALVE.withValveAbove(Length.metres(2)))));

    static final Catalogue CATALOGUE =
            Catalogue.of(List.of(item("Q50", 50, 61), item("Q80", 80, 88), item("Q200", 200, 190)));

    static final VesselBank BANK = VesselBank.of(
            InstalledVessel.of("boiler room", Volume.litres(140), GaugePressure.bar(1.0)),
            InstalledVessel.of("roof", Volume.litres(50), GaugePressure.bar(0.7))
                    .standing(Length.metres(6)));

    static final OperatingCurve CURVE = LoopInUse.of(RADIATORS.loop(), BANK, new Reading(GaugePressure.bar(1.3), COLD))
            .curve();

    static final SizingUncertainty UNCERTAIN = SizingUncertainty.of(Methods.EN_12828, RADIATORS)
            .contents(Uncertain.triangular(
                    new VolumeRange(Volume.litres(1000), Volume.litres(1150), Volume.litres(1400))))
            .coldTemperature(Uncertain.uniform(Temperature.celsius(8), Temperature.celsius(14)))
            .hotTemperature(Uncertain.normal(HOT, TemperatureDifference.kelvins(1.5)))
            .reliefSetting(Uncertain.normal(GaugePressure.bar(3), PressureDifference.bar(0.05)));

    private QuillbrookYard() {}

    static Loop loop(double litres, String fluid) {
        return Loop.withContents(Volume.litres(litres)).steel().filledWith(Fluids.parse(fluid));
    }

    static Loop waterLoop(double litres) {
        return Loop.withContents(Volume.litres(litres)).steel().filledWith(Water.IAPWS_IF97);
    }

    private static SizingJob job(Loop loop, VesselType vessel) {
        return new SizingJob(loop, vessel, LoopTemperatures.between(COLD, HOT), PRESSURES);
    }

    private static CatalogueItem item(String id, double litres, int price) {
        return CatalogueItem.named(id, VesselKind.BLADDER)
                .nominal(Volume.litres(litres))
                .maximum(GaugePressure.bar(6), Temperature.celsius(100))
                .emptyMass(Mass.kilograms(litres / 5))
                .standing(Area.squareMetres(litres / 1000), Length.metres(1))
                .connection("G 1")
                .price(BigDecimal.valueOf(price))
                .stock(9)
                .build();
    }
}
