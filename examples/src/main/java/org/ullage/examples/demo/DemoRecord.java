package org.ullage.examples.demo;

import java.time.LocalDate;
import java.time.Month;
import org.ullage.charge.ChargePlan;
import org.ullage.condition.FluidSample;
import org.ullage.condition.Look;
import org.ullage.condition.SampleValue;
import org.ullage.condition.Smell;
import org.ullage.loop.ContentsBasis;
import org.ullage.method.Sizing;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
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
import org.ullage.selection.CatalogueItem;
import org.ullage.support.VesselWeight;

/** The record of the invented building: commissioned in autumn, visited in the three after it. */
final class DemoRecord {

    static final String VESSEL = "V1";

    private static final int FIRST_YEAR = 2022;

    private DemoRecord() {}

    static ServiceBook of(Sizing sizing, CatalogueItem bought, VesselWeight weight, ChargePlan plan) {
        ServiceBook book = ServiceBook.of(commissioned(sizing, bought, weight, plan));
        double[] foundBar = {1.12, 1.06, 1.01};
        for (int i = 0; i < foundBar.length; i++) {
            book = book.withVisit(visit(FIRST_YEAR + 1 + i, foundBar[i]));
        }
        return book;
    }

    private static CommissioningNote commissioned(
            Sizing sizing, CatalogueItem bought, VesselWeight weight, ChargePlan plan) {
        VesselNote vessel = VesselNote.of(VESSEL)
                .kind(bought.kind())
                .nominal(bought.nominal())
                .rating(bought.rating())
                .maximumTemperature(bought.highestTemperature())
                .support(new SupportNote("wall bracket", weight.waterlogged()))
                .connection("return, 22 mm copper, " + bought.connection())
                .lockableValve(true)
                .charge(new ChargeNote(
                        GaugePressure.bar(1.5),
                        plan.toSet().pressure(),
                        plan.job().air(),
                        Gas.NITROGEN,
                        new GaugeNote(GaugePressure.bar(4), "class 1.6", "G-07")))
                .build();
        return CommissioningNote.of(
                        "Quillbrook Yard", LocalDate.of(FIRST_YEAR, Month.OCTOBER, 4), "T. Marlowe (invented)", vessel)
                .place("boiler room, cellar")
                .loop(new LoopNote(sizing.job().loop().contents(), ContentsBasis.TAKE_OFF, "water", null, null, null))
                .fill(new FillNote(plan.fillPressure(), plan.job().water(), null, plan.fillPressure(), null, null))
                .reliefSetting(sizing.job().pressures().reliefSetting())
                .staticHead(sizing.job().pressures().staticHead())
                .sizing(new SizingNote(sizing.method().title(), sizing.requiredVolume()))
                .build();
    }

    private static VisitRecord visit(int year, double foundBar) {
        return VisitRecord.of(LocalDate.of(year, Month.OCTOBER, 2), "T. Marlowe (invented)")
                .arrival(new ArrivalNote(
                        GaugePressure.bar(1.2),
                        Temperature.celsius(16),
                        GaugePressure.bar(2.1),
                        Temperature.celsius(62)))
                .charge(ChargeCheck.of(VESSEL)
                        .waterSideAtZero(true)
                        .found(GaugePressure.bar(foundBar))
                        .gasTemperature(Temperature.celsius(14))
                        .build())
                .makeUpWater(Volume.litres(4))
                .sample(SampleNote.of(FluidSample.of().with(SampleValue.ph(8.6)).with(Look.CLEAR, Smell.NONE)))
                .relief(new ReliefNote(false, true, true))
                .build();
    }
}
