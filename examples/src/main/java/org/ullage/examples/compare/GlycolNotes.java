package org.ullage.examples.compare;

import org.ullage.fluids.GlycolSolution;
import org.ullage.fluids.TemperatureLimit;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/** What has to be known about a glycol mixture besides its density. */
final class GlycolNotes {

    /** The published limits are whole degrees. */
    private static final int LIMIT_DIGITS = 3;

    private static final Caution CARE = new Caution(
            "Glycol harms people, animals, drains and soil, ethylene glycol most of all. The product's data sheets for safety and"
                    + " for use, local codes and the judgement of a licensed person come before these numbers; measure what is"
                    + " in the loop.",
            Source.commonPractice("usual care with antifreeze"));

    private GlycolNotes() {}

    static String text(GlycolSolution solution, Temperature highest, UnitSystem system) {
        StringBuilder text = new StringBuilder();
        text.append(freezing(solution, system))
                .append('\n')
                .append(limit(solution, system))
                .append('\n');
        solution.corrections()
                .forEach(cell -> text.append("corrected: ").append(cell).append('\n'));
        solution.glycol()
                .degradationCaution(highest)
                .ifPresent(caution -> text.append("CAUTION ").append(caution).append('\n'));
        return text.append("CAUTION ").append(CARE).append('\n').toString();
    }

    private static String freezing(GlycolSolution solution, UnitSystem system) {
        try {
            return "freezes at " + solution.freezingPoint().text(system) + " " + solution.freezingSource();
        } catch (OutOfRangeException unknown) {
            return "freezing point not known: " + unknown.getMessage();
        }
    }

    private static String limit(GlycolSolution solution, UnitSystem system) {
        TemperatureLimit limit = solution.glycol().maximumRecommendedTemperature();
        return "highest recommended temperature: " + limit.temperature().text(system, LIMIT_DIGITS) + ": "
                + limit.meaning() + " " + limit.source();
    }
}
