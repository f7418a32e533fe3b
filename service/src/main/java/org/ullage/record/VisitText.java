package org.ullage.record;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.condition.LoopTrait;
import org.ullage.quantity.UnitSystem;

/** A visit on paper. */
final class VisitText {

    private VisitText() {}

    static String of(VisitRecord visit, UnitSystem system) {
        RecordLines lines =
                new RecordLines(system).title("Visit of " + visit.date()).line("by", visit.by());
        arrival(lines, visit.arrival());
        visit.charges().forEach(charge -> charge(lines, charge));
        lines.title("Loop").line("make-up since last visit", visit.makeUpWater());
        relief(lines, visit.relief());
        sample(lines, visit.sample());
        lines.line("fluid treatment", visit.fluidTreatment())
                .line("findings", visit.findings())
                .line("changes", visit.changes());
        visit.replacements().forEach(replacement -> replacement(lines, replacement));
        return lines.line("remarks", visit.remarks()).toString();
    }

    private static void arrival(RecordLines lines, @Nullable ArrivalNote note) {
        ArrivalNote arrival = note == null ? new ArrivalNote(null, null, null, null) : note;
        lines.line("cold on arrival", arrival.coldPressure(), "with the water at", arrival.coldTemperature())
                .line("hot on arrival", arrival.hotPressure(), "with the water at", arrival.hotTemperature());
    }

    private static void charge(RecordLines lines, ChargeCheck charge) {
        lines.title("Charge of vessel " + charge.vessel())
                .line("water side at zero", charge.waterSideAtZero())
                .line("charge found", charge.found(), "with the gas at", charge.gasTemperature())
                .line("charge left", charge.left())
                .line("gas added", CommissioningText.word(charge.gasAdded()))
                .line("water at the gas valve", charge.waterAtGasValve())
                .line("gas valve leaks", charge.gasValveLeaks());
        CommissioningText.gauge(lines, charge.gauge());
    }

    private static void relief(RecordLines lines, @Nullable ReliefNote note) {
        ReliefNote relief = note == null ? new ReliefNote(null, null, null) : note;
        lines.line("relief valve discharged", relief.signsOfDischarge())
                .line("tried by its lever", relief.leverTested())
                .line("closed tight after", relief.closedTight());
    }

    private static void sample(RecordLines lines, @Nullable SampleNote note) {
        SampleNote sample = note == null ? new SampleNote(List.of(), List.of(), null, null, null, null, null) : note;
        lines.line("kind of loop", traits(sample.traits()))
                .line("measured in the fluid", CommissioningText.readings(sample.readings()))
                .line("look", sample.look() == null ? null : sample.look().word())
                .line("smell", sample.smell() == null ? null : sample.smell().word())
                .line("freezing point", sample.freezing())
                .line("lowest to stand", sample.lowest())
                .line("hottest it has been", sample.hottest());
    }

    private static @Nullable String traits(List<LoopTrait> traits) {
        return traits.isEmpty() ? null : traits.stream().map(LoopTrait::word).collect(Collectors.joining(", "));
    }

    private static void replacement(RecordLines lines, Replacement replacement) {
        lines.title("Vessel " + replacement.vessel() + " replaced")
                .line("reason", replacement.reason())
                .line("isolated and drained", replacement.isolation())
                .line("lifting aid", replacement.liftingAid());
        CommissioningText.vessel(lines, replacement.fitted());
    }
}
