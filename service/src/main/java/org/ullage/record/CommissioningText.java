package org.ullage.record;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.UnitSystem;

/** A commissioning note on paper. */
final class CommissioningText {

    private CommissioningText() {}

    static String of(CommissioningNote note, UnitSystem system) {
        RecordLines lines = new RecordLines(system)
                .title("Commissioning of " + note.installation())
                .line("place", note.place())
                .line("date", note.date().toString())
                .line("by", note.by())
                .line("witnessed by", note.witnessedBy());
        loop(lines, note);
        note.vessels().forEach(vessel -> vessel(lines, vessel));
        fill(lines, note.fill());
        tests(lines, note);
        return lines.line("remarks", note.remarks()).toString();
    }

    private static void loop(RecordLines lines, CommissioningNote note) {
        LoopNote loop = note.loop() == null ? new LoopNote(null, null, null, null, null, null) : note.loop();
        SizingNote sizing = note.sizing();
        lines.line("loop contents", loop.contents())
                .line(
                        "contents known by",
                        loop.contentsBasis() == null
                                ? null
                                : loop.contentsBasis().toString())
                .line("fluid", loop.fluid())
                .line("antifreeze by volume", loop.volumeConcentration())
                .line("antifreeze by mass", loop.massConcentration())
                .line("freezing point", loop.freezingPoint())
                .line("static head", note.staticHead())
                .line("relief setting", note.reliefSetting())
                .line("relief valve lifted at", note.reliefLiftedAt())
                .line("sized by", sizing == null ? null : sizing.method())
                .line("volume asked for", sizing == null ? null : sizing.requiredVolume());
    }

    /** One vessel; also for one that was fitted later. */
    static void vessel(RecordLines lines, VesselNote vessel) {
        SupportNote support = vessel.support() == null ? new SupportNote(null, null) : vessel.support();
        ChargeNote charge = vessel.charge() == null ? new ChargeNote(null, null, null, null, null) : vessel.charge();
        lines.title("Vessel " + vessel.id())
                .line("kind", vessel.kind() == null ? null : vessel.kind().word())
                .line("nominal volume", vessel.nominal())
                .line("rating", vessel.rating())
                .line("maximum temperature", vessel.maximumTemperature())
                .line("serial, plate", vessel.serial())
                .line("support", support.type())
                .line("support checked for", support.checkedFor())
                .line("connected at", vessel.connection())
                .line("lockable valve and drain", vessel.lockableValve())
                .line("charge found", charge.found())
                .line("charge set", charge.set(), "with the gas at", charge.gasTemperature())
                .line("gas", word(charge.gas()));
        gauge(lines, charge.gauge());
    }

    static @Nullable String word(@Nullable Gas gas) {
        return gas == null ? null : gas.word();
    }

    static void gauge(RecordLines lines, @Nullable GaugeNote gauge) {
        GaugeNote known = gauge == null ? new GaugeNote(null, null, null) : gauge;
        lines.line("gauge", known.identity())
                .line("its full scale", known.fullScale())
                .line("its class", known.accuracyClass());
    }

    private static void fill(RecordLines lines, @Nullable FillNote note) {
        FillNote fill = note == null ? new FillNote(null, null, null, null, null, null) : note;
        lines.title("Filling")
                .line("filled to", fill.pressure(), "with the water at", fill.waterTemperature())
                .line("gauge above the vessel", fill.gaugeAboveVessel())
                .line("minimum mark set at", fill.minimumMark())
                .line("hottest", fill.hotPressure(), "with the water at", fill.hotTemperature());
    }

    private static void tests(RecordLines lines, CommissioningNote note) {
        LeakTest test = note.leakTest() == null ? new LeakTest(null, null, null) : note.leakTest();
        FillWaterNote water =
                note.fillWater() == null ? new FillWaterNote(null, null, List.of(), null) : note.fillWater();
        lines.line("leak test at", test.pressure())
                .line("held for", test.duration())
                .line("drop", test.drop())
                .line("fill water", water.amount())
                .line("its hardness", water.hardness())
                .line("measured in it", readings(water.readings()))
                .line("its treatment", water.treatment());
    }

    static @Nullable String readings(List<SampleReading> readings) {
        return readings.isEmpty()
                ? null
                : readings.stream().map(reading -> reading.value().text()).collect(Collectors.joining(", "));
    }
}
