package org.ullage.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/** What may be wrong, or merely other, with an implementation that makes none of the known mistakes. */
enum OwnError {
    ROUNDED_OFF("noise of 0.001 %", random -> si -> si * (1 + 1e-5 * random.nextGaussian())),
    TWO_DIGITS("rounds to two digits", random -> OwnError::toTwoDigits),
    SLIGHT_NOISE("noise of 0.3 %", random -> si -> si * (1 + 0.003 * random.nextGaussian())),
    NOISE("noise of 5 %", random -> si -> si * (1 + 0.05 * random.nextGaussian())),
    WILD("noise of 50 %", random -> si -> si * Math.exp(0.5 * random.nextGaussian())),
    ADDITION("adds 10 %", random -> si -> 1.1 * si),
    FACTOR("a factor of its own, 0.5 to 2", random -> times(Math.pow(4, random.nextDouble()) / 2)),
    RECIPROCAL("gives the reciprocal", random -> si -> 1 / si),
    OTHER_WATER("another formulation of water", random -> DoubleUnaryOperator.identity()) {
        @Override
        Question understood(Question question) {
            boolean water =
                    question.has(Input.FLUID) && question.text(Input.FLUID).startsWith("water");
            return water ? question.with(Input.FLUID, "water/table") : question;
        }
    },
    OTHER_AIR("1 bar of air in place of what is given", random -> DoubleUnaryOperator.identity()) {
        @Override
        Question understood(Question question) {
            return question.with(Input.ATMOSPHERE, "1 bar abs");
        }
    };

    private final String words;

    private final Function<Random, DoubleUnaryOperator> figure;

    OwnError(String words, Function<Random, DoubleUnaryOperator> figure) {
        this.words = words;
        this.figure = figure;
    }

    /** How this implementation takes a question. */
    Question understood(Question question) {
        return question;
    }

    /** What it makes of the figure that is right. */
    DoubleUnaryOperator figure(Random random) {
        return figure.apply(random);
    }

    private static DoubleUnaryOperator times(double factor) {
        return si -> factor * si;
    }

    private static double toTwoDigits(double si) {
        return new BigDecimal(si).round(new MathContext(2)).doubleValue();
    }

    @Override
    public String toString() {
        return words;
    }
}
