package org.ullage.fuzz;

import java.time.LocalDate;
import org.ullage.condition.FluidSample;
import org.ullage.condition.Look;
import org.ullage.condition.SampleValue;
import org.ullage.condition.Smell;
import org.ullage.loop.ContentsBasis;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.record.ArrivalNote;
import org.ullage.record.ChargeCheck;
import org.ullage.record.ChargeNote;
import org.ullage.record.CommissioningNote;
import org.ullage.record.FillNote;
import org.ullage.record.Gas;
import org.ullage.record.GaugeNote;
import org.ullage.record.LoopNote;
import org.ullage.record.ReliefNote;
import org.ullage.record.SampleNote;
import org.ullage.record.ServiceBook;
import org.ullage.record.SizingNote;
import org.ullage.record.SupportNote;
import org.ullage.record.VesselNote;
import org.ullage.record.VisitRecord;
import org.ullage.vessel.VesselKind;

/** An invented service book with most that one can hold. */
final class Books {

    private static final LocalDate START = LocalDate.of(2021, 10, 4);

    private Books() {}

    static ServiceBook full() {
        CommissioningNote note = CommissioningNote.of("Quillbrook Yard", START, "T. Marlowe (invented)", vessel("V1"))
                .vessel(vessel("V2"))
                .place("boiler room, cellar")
                .loop(new LoopNote(
                        Volume.litres(1150),
                        ContentsBasis.TAKE_OFF,
                        "propylene glycol 30 vol%",
                        VolumeFraction.percent(30),
                        null,
                        Temperature.celsius(-13)))
                .fill(new FillNote(
                        GaugePressure.bar(1.5),
                        Temperature.celsius(15),
                        Length.metres(0.5),
                        GaugePressure.bar(1.4),
                        GaugePressure.bar(2.3),
                        Temperature.celsius(70)))
                .reliefSetting(GaugePressure.bar(3))
                .staticHead(Length.metres(9.5))
                .sizing(new SizingNote("EN 12828", Volume.litres(93.5)))
                .build();
        ServiceBook book = ServiceBook.of(note);
        for (int year = 1; year <= 3; year++) {
            book = book.withVisit(visit(year));
        }
        return book;
    }

    private static VesselNote vessel(String id) {
        return VesselNote.of(id)
                .kind(VesselKind.DIAPHRAGM)
                .nominal(Volume.litres(50))
                .rating(GaugePressure.bar(6))
                .maximumTemperature(Temperature.celsius(70))
                .support(new SupportNote("wall bracket", Mass.kilograms(65)))
                .connection("return")
                .lockableValve(true)
                .charge(new ChargeNote(
                        GaugePressure.bar(1.5),
                        GaugePressure.bar(1.2),
                        Temperature.celsius(18),
                        Gas.NITROGEN,
                        new GaugeNote(GaugePressure.bar(4), "class 1.6", "G-07")))
                .build();
    }

    private static VisitRecord visit(int year) {
        return VisitRecord.of(START.plusYears(year), "T. Marlowe (invented)")
                .arrival(new ArrivalNote(
                        GaugePressure.bar(1.2),
                        Temperature.celsius(16),
                        GaugePressure.bar(2.1),
                        Temperature.celsius(62)))
                .charge(ChargeCheck.of("V1")
                        .waterSideAtZero(true)
                        .found(GaugePressure.bar(1.2 - 0.05 * year))
                        .gasTemperature(Temperature.celsius(14))
                        .build())
                .makeUpWater(Volume.litres(4))
                .sample(SampleNote.of(FluidSample.of().with(SampleValue.ph(8.6)).with(Look.CLEAR, Smell.NONE)))
                .relief(new ReliefNote(false, true, true))
                .build();
    }
}
