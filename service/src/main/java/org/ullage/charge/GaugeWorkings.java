package org.ullage.charge;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** The steps of a gauge choice. */
final class GaugeWorkings {

    private static final Source OF_SPAN = Source.computed("accuracy class of a dial gauge", "percent of span");
    private static final Source SHARE = Source.computed("share of the reading", "error over absolute pressure");

    private GaugeWorkings() {}

    static Workings of(GaugeChoice choice) {
        Gauge gauge = choice.gauge();
        ScalePart part = gauge.range().part(choice.reading());
        Term reading = Term.of("p", choice.reading());
        Term low = Term.of("p_low", gauge.range().low());
        Term high = Term.of("p_high", gauge.range().high());
        Term percent = Term.number("c", gauge.accuracy().percentOfSpan(part));
        Term error = Term.of("e", choice.error());
        Term air = Term.of("p_a", choice.atmosphere());
        List<Step> steps = new ArrayList<>(List.of(
                new Step(
                        "place of the reading on the dial, in its " + part,
                        "(p - p_low) / (p_high - p_low)",
                        List.of(reading, low, high),
                        Term.number("s", gauge.range().position(choice.reading())),
                        OF_SPAN),
                Step.given(
                        "permissible error there, percent of the span",
                        percent,
                        gauge.accuracy().name(),
                        gauge.accuracy().source()),
                new Step(
                        "error at the reading, either way",
                        "c / 100 * (p_high - p_low)",
                        List.of(percent, low, high),
                        error,
                        OF_SPAN),
                new Step(
                        "error as a share of the absolute pressure",
                        "e / (p + p_a)",
                        List.of(error, reading, air),
                        Term.number("e_abs", choice.errorOfAbsolute()),
                        SHARE)));
        VesselAcceptance vessel = choice.vessel();
        if (vessel != null) {
            AbsolutePressure charge = choice.reading().absolute(choice.atmosphere());
            AbsolutePressure lower = choice.reading().minus(choice.error()).absolute(choice.atmosphere());
            AbsolutePressure higher = choice.reading().plus(choice.error()).absolute(choice.atmosphere());
            steps.add(AcceptanceStep.of(vessel, "if the reading is right", "p_0", charge, "V_0"));
            steps.add(AcceptanceStep.of(vessel, "if the true charge is lower", "p_low0", lower, "V_low"));
            steps.add(AcceptanceStep.of(vessel, "if the true charge is higher", "p_high0", higher, "V_high"));
        }
        return new Workings("Error of a gauge", steps);
    }
}
