package org.ullage.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
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
import org.ullage.vessel.VesselKind;

/** Invented records for the tests: one with everything in it, one with as little as there can be. */
final class Books {

    static final LocalDate START = LocalDate.of(2020, 10, 1);

    private static final ObjectMapper JSON = new ObjectMapper();

    private Books() {}

    static GaugeNote gauge() {
        return new GaugeNote(GaugePressure.bar(4), "EN 837-1 class 1", "gauge 17");
    }

    static VesselNote vessel(String id, double charge, double gasCelsius) {
        return VesselNote.of(id)
                .kind(VesselKind.DIAPHRAGM)
                .nominal(Volume.litres(50))
                .rating(GaugePressure.bar(6))
                .maximumTemperature(Temperature.celsius(70))
                .serial("no. 1234, 2019")
                .support(new SupportNote("wall bracket", Mass.kilograms(65)))
                .connection("return, coldest point")
                .lockableValve(true)
                .charge(new ChargeNote(
                        GaugePressure.bar(1.5),
                        GaugePressure.bar(charge),
                        Temperature.celsius(gasCelsius),
                        Gas.NITROGEN,
                        gauge()))
                .build();
    }

    static CommissioningNote fullNote() {
        return CommissioningNote.of("Mill House", START, "A. Fitter, Example Heating", vessel("V1", 1.2, 20))
                .place("boiler room, ground floor")
                .loop(new LoopNote(
                        Volume.litres(600),
                        ContentsBasis.TAKE_OFF,
                        "propylene glycol 30 vol%",
                        VolumeFraction.percent(30),
                        MassFraction.percent(30.6),
                        Temperature.celsius(-13)))
                .vessel(vessel("V2", 1.1, 18))
                .fill(new FillNote(
                        GaugePressure.bar(1.5),
                        Temperature.celsius(15),
                        Length.metres(0.5),
                        GaugePressure.bar(1.4),
                        GaugePressure.bar(2.3),
                        Temperature.celsius(70)))
                .reliefSetting(GaugePressure.bar(3))
                .reliefLiftedAt(GaugePressure.bar(3.05))
                .staticHead(Length.metres(8))
                .sizing(new SizingNote("en-12828", Volume.litres(88)))
                .leakTest(new LeakTest(GaugePressure.bar(4), "2 h", PressureDifference.bar(0)))
                .fillWater(new FillWaterNote(
                        Volume.litres(610),
                        "0.5 mmol/L",
                        List.of(SampleReading.of(SampleValue.ph(8.1)), SampleReading.of(SampleValue.conductivity(90))),
                        "desalinated"))
                .witnessedBy("B. Owner")
                .remarks("none")
                .build();
    }

    static CommissioningNote leastNote() {
        return CommissioningNote.of(
                        "Shed", START, "A. Fitter", VesselNote.of("V1").build())
                .build();
    }

    static SampleNote sample(double ph) {
        return SampleNote.of(FluidSample.of(LoopTrait.SOLAR, LoopTrait.GLYCOL)
                .with(SampleValue.ph(ph))
                .with(SampleValue.conductivity(420))
                .with(Look.YELLOW_BROWN, Smell.NONE)
                .freezingAt(Temperature.celsius(-12), Temperature.celsius(-10))
                .heatedTo(Temperature.celsius(130)));
    }

    static ChargeCheck found(String vessel, double bar, double gasCelsius) {
        return ChargeCheck.of(vessel)
                .waterSideAtZero(true)
                .found(GaugePressure.bar(bar))
                .gasTemperature(Temperature.celsius(gasCelsius))
                .build();
    }

    static VisitRecord visit(LocalDate date, ChargeCheck check) {
        return VisitRecord.of(date, "C. Service").charge(check).build();
    }

    static VisitRecord fullVisit() {
        return VisitRecord.of(START.plusYears(1), "C. Service")
                .arrival(new ArrivalNote(
                        GaugePressure.bar(1.4),
                        Temperature.celsius(18),
                        GaugePressure.bar(2.4),
                        Temperature.celsius(69)))
                .charge(found("V1", 1.05, 16).toBuilder()
                        .left(GaugePressure.bar(1.2))
                        .gasAdded(Gas.NITROGEN)
                        .waterAtGasValve(false)
                        .gasValveLeaks(true)
                        .gauge(gauge())
                        .build())
                .makeUpWater(Volume.litres(3))
                .sample(sample(8.2))
                .relief(new ReliefNote(false, true, true))
                .findings("gas valve core weeps; replaced")
                .changes("one radiator added")
                .fluidTreatment("inhibitor topped up")
                .replacement(new Replacement(
                        "V2", vessel("V3", 1.1, 17), "membrane torn", "lockable valve closed, drained", "two persons"))
                .remarks("come back in spring")
                .build();
    }

    static ServiceBook fullBook() {
        return ServiceBook.of(fullNote()).withVisit(fullVisit());
    }

    static ServiceBook leastBook() {
        return ServiceBook.of(leastNote());
    }

    static String json(Object record) {
        try {
            return JSON.writeValueAsString(record);
        } catch (JsonProcessingException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static <T> T read(String json, Class<T> type) {
        try {
            return JSON.readValue(json, type);
        } catch (JsonProcessingException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Object serialised(Object record) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            new ObjectOutputStream(bytes).writeObject(record);
            return new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray())).readObject();
        } catch (IOException | ClassNotFoundException failed) {
            throw new IllegalStateException(failed);
        }
    }
}
