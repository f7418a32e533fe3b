package org.ullage.sharing;

import java.time.LocalDate;
import java.util.List;
import org.ullage.condition.FluidSample;
import org.ullage.condition.Look;
import org.ullage.condition.LoopTrait;
import org.ullage.condition.SampleValue;
import org.ullage.condition.Smell;
import org.ullage.loop.ContentsBasis;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.record.ArrivalNote;
import org.ullage.record.ChargeCheck;
import org.ullage.record.ChargeNote;
import org.ullage.record.CommissioningNote;
import org.ullage.record.FillNote;
import org.ullage.record.FillWaterNote;
import org.ullage.record.Gas;
import org.ullage.record.GaugeNote;
import org.ullage.record.LeakTest;
import org.ullage.record.LoopNote;
import org.ullage.record.ReliefNote;
import org.ullage.record.Replacement;
import org.ullage.record.SampleNote;
import org.ullage.record.SampleReading;
import org.ullage.record.ServiceBook;
import org.ullage.record.SizingNote;
import org.ullage.record.SupportNote;
import org.ullage.record.VesselNote;
import org.ullage.record.VisitRecord;
import org.ullage.vessel.VesselKind;

/** Ten years of the yard's service book, with every kind of note in it. */
final class YardBook {

    static final FluidSample SAMPLE = FluidSample.of(LoopTrait.SOLAR, LoopTrait.GLYCOL)
            .with(SampleValue.ph(7.4))
            .with(SampleValue.conductivity(420))
            .with(Look.YELLOW_BROWN, Smell.NONE)
            .freezingAt(Temperature.celsius(-12), Temperature.celsius(-10));

    private static final LocalDate START = LocalDate.of(2016, 10, 3);
    private static final Temperature TWENTY = Temperature.celsius(20);

    private YardBook() {}

    static ServiceBook kept() {
        return ServiceBook.of(commissioning())
                .withVisit(visit(2, 1.12))
                .withVisit(visit(5, 0.98))
                .withVisit(lastVisit());
    }

    private static CommissioningNote commissioning() {
        return CommissioningNote.of("Quillbrook Yard", START, "A. Fitter", vessel("V1"))
                .place("boiler room")
                .loop(new LoopNote(
                        Volume.litres(1150),
                        ContentsBasis.TAKE_OFF,
                        "propylene glycol 30 vol%",
                        VolumeFraction.percent(30),
                        MassFraction.percent(30.6),
                        Temperature.celsius(-13)))
                .vessel(vessel("V2"))
                .fill(new FillNote(
                        GaugePressure.bar(1.5),
                        Temperature.celsius(15),
                        Length.metres(0.5),
                        GaugePressure.bar(1.4),
                        GaugePressure.bar(2.3),
                        Temperature.celsius(70)))
                .reliefSetting(GaugePressure.bar(3))
                .staticHead(Length.metres(9.5))
                .sizing(new SizingNote("en-12828", Volume.litres(140)))
                .leakTest(new LeakTest(GaugePressure.bar(4), "2 h", PressureDifference.bar(0)))
                .fillWater(new FillWaterNote(
                        Volume.litres(1160),
                        "0.5 mmol/L",
                        List.of(SampleReading.of(SampleValue.ph(8.1))),
                        "desalinated"))
                .build();
    }

    private static VesselNote vessel(String id) {
        return VesselNote.of(id)
                .kind(VesselKind.DIAPHRAGM)
                .nominal(Volume.litres(50))
                .support(new SupportNote("wall bracket", Mass.kilograms(65)))
                .charge(new ChargeNote(
                        GaugePressure.bar(1.5),
                        GaugePressure.bar(1.2),
                        TWENTY,
                        Gas.NITROGEN,
                        new GaugeNote(GaugePressure.bar(4), "EN 837-1 class 1", "gauge 17")))
                .build();
    }

    private static VisitRecord visit(int years, double bar) {
        return VisitRecord.of(START.plusYears(years), "C. Service")
                .charge(charge(bar))
                .sample(SampleNote.of(SAMPLE))
                .build();
    }

    private static VisitRecord lastVisit() {
        return VisitRecord.of(START.plusYears(10), "C. Service")
                .arrival(new ArrivalNote(
                        GaugePressure.bar(1.4),
                        Temperature.celsius(18),
                        GaugePressure.bar(2.4),
                        Temperature.celsius(69)))
                .charge(charge(0.81))
                .sample(SampleNote.of(SAMPLE))
                .relief(new ReliefNote(false, true, true))
                .replacement(
                        new Replacement("V2", vessel("V3"), "membrane torn", "valve closed, drained", "two persons"))
                .build();
    }

    private static ChargeCheck charge(double bar) {
        return ChargeCheck.of("V1")
                .waterSideAtZero(true)
                .found(GaugePressure.bar(bar))
                .gasTemperature(TWENTY)
                .build();
    }
}
