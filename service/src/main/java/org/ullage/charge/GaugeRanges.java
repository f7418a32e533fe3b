package org.ullage.charge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ullage.provenance.Source;
import org.ullage.quantity.GaugePressure;

/** The usual ranges of dials, and the choice among ranges. */
public final class GaugeRanges {

    private static final Source EN_RANGES = Source.fromMemory("EN 837-1", "ranges in bar, as far as vessels need them");
    private static final Source PSI_RANGES = Source.fromMemory("ASME B40.100", "usual dials in psi");

    private static final GaugePressure ZERO = GaugePressure.bar(0);

    /** From zero to 0.6, 1, 1.6, 2.5, 4, 6, 10 and 16 bar. */
    public static final List<GaugeRange> EN_837_1 = List.of(
            bar(0.6, EN_RANGES),
            bar(1, EN_RANGES),
            bar(1.6, EN_RANGES),
            bar(2.5, EN_RANGES),
            bar(4, EN_RANGES),
            bar(6, EN_RANGES),
            bar(10, EN_RANGES),
            bar(16, EN_RANGES));

    /** From zero to 15, 30, 60, 100, 160 and 200 psi. */
    public static final List<GaugeRange> PSI_DIALS = List.of(
            psi(15, PSI_RANGES),
            psi(30, PSI_RANGES),
            psi(60, PSI_RANGES),
            psi(100, PSI_RANGES),
            psi(160, PSI_RANGES),
            psi(200, PSI_RANGES));

    private GaugeRanges() {}

    private static GaugeRange bar(double high, Source source) {
        return new GaugeRange(ZERO, GaugePressure.bar(high), source);
    }

    private static GaugeRange psi(double high, Source source) {
        return new GaugeRange(ZERO, GaugePressure.psi(high), source);
    }

    /**
     * The ranges that gauges of a class usually come in.
     *
     * @param accuracy the class
     * @return dials in psi for ASME grades, in bar for EN classes, both for any other
     */
    public static List<GaugeRange> usualFor(GaugeClass accuracy) {
        if (accuracy.standard().equals(GaugeClasses.ASME)) {
            return PSI_DIALS;
        }
        if (accuracy.standard().equals(GaugeClasses.EN)) {
            return EN_837_1;
        }
        List<GaugeRange> both = new ArrayList<>(EN_837_1);
        both.addAll(PSI_DIALS);
        return List.copyOf(both);
    }

    /**
     * The range that serves a reading best: it covers the highest pressure the gauge will see; among those, one with the reading in its
     * middle half comes first, then the one with the least error.
     *
     * @param ranges to choose from
     * @param accuracy class of the gauge
     * @param reading what is to be read
     * @param highest what the gauge will see at most
     * @return the gauge, or empty if no range covers both pressures
     */
    public static Optional<Gauge> best(
            List<GaugeRange> ranges, GaugeClass accuracy, GaugePressure reading, GaugePressure highest) {
        return ranges.stream()
                .filter(range -> range.covers(reading) && range.covers(highest))
                .map(range -> new Gauge(range, accuracy))
                .min(Comparator.comparing((Gauge gauge) -> !gauge.range().inMiddleHalf(reading))
                        .thenComparing(gauge -> gauge.errorAt(reading)));
    }
}
