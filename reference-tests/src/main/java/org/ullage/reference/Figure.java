package org.ullage.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A printed figure: its digits, its unit, and the way between that unit and SI. */
final class Figure {

    private static final Pattern PARTS = Pattern.compile("([+-]?[0-9]*\\.?[0-9]+(?:[eE][+-]?[0-9]+)?)\\s*(.*)");

    /** Digits of an answer shown beyond those that the stated figure has. */
    private static final int EXTRA_DIGITS = 2;

    private static final int LEAST_DIGITS = 4;

    private final Measure measure;
    private final String text;
    private final double si;
    private final double siOfOne;
    private final double siOfZero;

    private Figure(Measure measure, String text, double si, double siOfOne, double siOfZero) {
        this.measure = measure;
        this.text = text;
        this.si = si;
        this.siOfOne = siOfOne;
        this.siOfZero = siOfZero;
    }

    /** Reads a figure; two more readings of its unit give the straight line to SI, whatever the unit. */
    static Figure of(Measure measure, String text) {
        double si = measure.read(text);
        String unit = unit(text);
        double one = measure.read("1 " + unit);
        double slope = measure.read("2 " + unit) - one;
        return new Figure(measure, text, si, slope, one - slope);
    }

    static double number(String text) {
        return Double.parseDouble(parts(text).group(1));
    }

    static String unit(String text) {
        return parts(text).group(2);
    }

    /** The unit of a text that is a number with a unit; empty for any other text. */
    static Optional<String> unitOf(String text) {
        Matcher parts = PARTS.matcher(text);
        return parts.matches() && !parts.group(2).isEmpty() ? Optional.of(parts.group(2)) : Optional.empty();
    }

    private static Matcher parts(String text) {
        Matcher parts = PARTS.matcher(text);
        if (!parts.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not a number with a unit");
        }
        return parts;
    }

    Measure measure() {
        return measure;
    }

    String text() {
        return text;
    }

    double si() {
        return si;
    }

    /** Another value in this figure's unit, with two digits more than this figure has. */
    String textOf(double otherSi) {
        int digits = new BigDecimal(parts(text).group(1)).precision() + EXTRA_DIGITS;
        return rounded((otherSi - siOfZero) / siOfOne, Math.max(LEAST_DIGITS, digits)) + unitSuffix();
    }

    /** How far another value is from this figure, in this figure's unit, with its sign. */
    String differenceOf(double otherSi) {
        double difference = (otherSi - si) / siOfOne;
        return (difference < 0 ? "" : "+") + String.format(Locale.ROOT, "%.2g", difference);
    }

    private String unitSuffix() {
        String unit = unit(text);
        return unit.isEmpty() ? "" : " " + unit;
    }

    private static String rounded(double number, int digits) {
        BigDecimal value = new BigDecimal(number).round(new MathContext(digits));
        int magnitude = value.precision() - value.scale() - 1;
        boolean plain = value.signum() == 0 || (magnitude >= -5 && magnitude <= 9);
        return plain ? value.toPlainString() : value.toString();
    }
}
