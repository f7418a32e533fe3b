package org.ullage.support;

import org.ullage.provenance.Source;

/**
 * How a beam is held and loaded. With W the load on one span, or on the cantilever, the greatest moment is m W L and the greatest
 * deflection d W L^3 / (E I). The factors that load tables print follow from m and d; a deflection factor of 1.25 that is printed for the
 * load at the centre is a slip, it is 0.8.
 */
public enum BeamCase {
    /** Simple span, load spread evenly. */
    SIMPLE_UNIFORM("simple beam, uniform", 1.0 / 8, 5.0 / 384, Theory.SOURCE),
    /** Simple span, load at the centre. */
    SIMPLE_CENTRE("simple beam, point load at centre", 1.0 / 4, 1.0 / 48, Theory.SOURCE),
    /** Simple span, half the load at each quarter point. */
    SIMPLE_QUARTER_POINTS("simple beam, two equal loads at quarter points", 1.0 / 8, 11.0 / 768, Theory.SOURCE),
    /** Both ends held fast, load spread evenly. */
    FIXED_UNIFORM("fixed ends, uniform", 1.0 / 12, 1.0 / 384, Theory.SOURCE),
    /** Both ends held fast, load at the centre. */
    FIXED_CENTRE("fixed ends, point load at centre", 1.0 / 8, 1.0 / 192, Theory.SOURCE),
    /** Cantilever, load spread evenly. */
    CANTILEVER_UNIFORM("cantilever, uniform", 1.0 / 2, 1.0 / 8, Theory.SOURCE),
    /** Cantilever, load at its end. */
    CANTILEVER_END("cantilever, point load at end", 1, 1.0 / 3, Theory.SOURCE),
    /** Two equal spans, load spread evenly over one. */
    TWO_SPANS_UNIFORM_ON_ONE("two equal spans, uniform on one", 49.0 / 512, 0.00915056, Theory.SOURCE),
    /** Two equal spans, load spread evenly over each. */
    TWO_SPANS_UNIFORM_ON_BOTH("two equal spans, uniform on both", 1.0 / 8, 0.00541612, Theory.SOURCE),
    /** Two equal spans, load at the centre of one. */
    TWO_SPANS_CENTRE_OF_ONE("two equal spans, point load at centre of one", 13.0 / 64, 0.0150120, Theory.SOURCE),
    /** Two equal spans, load at the centre of each. */
    TWO_SPANS_CENTRE_OF_BOTH("two equal spans, point load at centre of both", 3.0 / 16, 0.00931695, Theory.SOURCE);

    /** The source, in a class of its own because the constants above need it first. */
    private static final class Theory {
        private static final Source SOURCE = Source.computed(
                "elementary beam theory",
                "greatest moment and deflection; gives the static load conversions of metal-framing engineering data");
    }

    private final String words;
    private final double moment;
    private final double deflection;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is an immutable record
    private final Source source;

    BeamCase(String words, double moment, double deflection, Source source) {
        this.words = words;
        this.moment = moment;
        this.deflection = deflection;
        this.source = source;
    }

    /**
     * The greatest moment for unit load and span.
     *
     * @return m in M = m W L
     */
    public double momentCoefficient() {
        return moment;
    }

    /**
     * The greatest deflection for unit load, span and stiffness.
     *
     * @return d in y = d W L^3 / (E I)
     */
    public double deflectionCoefficient() {
        return deflection;
    }

    /**
     * The load of equal bending stress, relative to a simple span with its load spread evenly.
     *
     * @return the factor on the tabulated uniform load
     */
    public double loadFactor() {
        return SIMPLE_UNIFORM.moment / moment;
    }

    /**
     * The deflection at equal bending stress, relative to a simple span with its load spread evenly.
     *
     * @return the factor on the tabulated deflection
     */
    public double deflectionFactor() {
        return deflection / SIMPLE_UNIFORM.deflection * loadFactor();
    }

    /**
     * Where the coefficients come from.
     *
     * @return their source
     */
    public Source source() {
        return source;
    }

    /**
     * The case in words.
     *
     * @return such as {@code cantilever, uniform}
     */
    @Override
    public String toString() {
        return words;
    }
}
