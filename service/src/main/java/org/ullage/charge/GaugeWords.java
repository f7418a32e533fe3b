package org.ullage.charge;

import java.util.Optional;
import org.ullage.quantity.Digits;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/** A gauge choice for people. */
final class GaugeWords {

    private static final int DIGITS = 3;

    private GaugeWords() {}

    static String of(GaugeChoice choice, UnitSystem system) {
        StringBuilder text = new StringBuilder();
        line(text, "gauge: " + choice.gauge().text(system));
        line(
                text,
                "at " + choice.reading().text(system) + " it may be off by " + error(choice.error(), system)
                        + " either way: " + ofReading(choice)
                        + percent(choice.errorOfAbsolute()) + " of the absolute pressure");
        acceptance(text, "lower", choice.acceptanceIfLow(), system);
        acceptance(text, "higher", choice.acceptanceIfHigh(), system);
        line(
                text,
                (choice.decides() ? "it can decide to within " : "it cannot decide to within ")
                        + choice.tolerance().text(system));
        choice.better()
                .ifPresent(gauge -> line(
                        text,
                        "better: " + gauge.text(system) + ", off by "
                                + error(gauge.errorAt(choice.reading()), system)));
        for (Caution warning : choice.warnings()) {
            line(text, "! " + warning);
        }
        return text.toString();
    }

    private static String ofReading(GaugeChoice choice) {
        return choice.reading().si() == 0
                ? ""
                : percent(choice.gauge().errorOfReading(choice.reading())) + " of the reading, ";
    }

    private static void acceptance(StringBuilder text, String which, Optional<Volume> change, UnitSystem system) {
        change.ifPresent(volume -> line(
                text,
                "if the true charge is " + which + " by that, the vessel takes in "
                        + volume.times(Math.signum(volume.si())).text(system, DIGITS)
                        + (volume.si() < 0 ? " less" : " more")));
    }

    private static String error(PressureDifference error, UnitSystem system) {
        return error.text(system, DIGITS);
    }

    private static String percent(double share) {
        return Digits.significant(100 * share, DIGITS) + " %";
    }

    private static void line(StringBuilder text, String words) {
        text.append(words).append('\n');
    }
}
