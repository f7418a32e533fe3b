package org.ullage.support;

import org.ullage.provenance.Source;
import org.ullage.quantity.Length;

/** How far a beam may sag, as a part of its span. */
public enum DeflectionLimit {
    /** Span / 180. */
    SPAN_180(180, DeflectionLimit.usual()),
    /** Span / 240. */
    SPAN_240(240, DeflectionLimit.usual()),
    /** Span / 360. */
    SPAN_360(360, DeflectionLimit.usual());

    private final int divisor;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is an immutable record
    private final Source source;

    DeflectionLimit(int divisor, Source source) {
        this.divisor = divisor;
        this.source = source;
    }

    private static Source usual() {
        return Source.commonPractice("columns of beam load tables for metal framing");
    }

    /**
     * The limit for a span.
     *
     * @param span the span, or the length of a cantilever
     * @return span over the divisor
     */
    public Length of(Length span) {
        return span.times(1.0 / divisor);
    }

    /**
     * Where the limit comes from.
     *
     * @return its source
     */
    public Source source() {
        return source;
    }

    /**
     * The limit in words.
     *
     * @return such as {@code span/240}
     */
    @Override
    public String toString() {
        return "span/" + divisor;
    }
}
