package org.ullage.record;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * One point of a trend.
 *
 * @param years time since the first day
 * @param value what was measured
 * @param stretch points of one stretch lie on one line; stretches share the slope
 */
record TrendPoint(double years, double value, int stretch) {

    private static final Constant YEAR =
            new Constant("a", 365.25, "d", Source.fromMemory("IAU Style Manual", "1989, Julian year"));

    static double years(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / YEAR.value();
    }
}
