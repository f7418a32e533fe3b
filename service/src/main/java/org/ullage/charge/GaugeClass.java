package org.ullage.charge;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * How far a dial gauge may be off, in percent of its span and not of the reading. Grades of ASME B40.100 allow more in the outer
 * quarters of the scale than in its middle half; classes of EN 837-1 have one limit. Standard ones are in {@link GaugeClasses}.
 * Immutable.
 *
 * @param standard the standard, such as {@code EN 837-1}
 * @param grade grade or class in it, such as {@code class 1.6}
 * @param lowerQuarter permissible error in the lowest quarter of the span, in percent of the span
 * @param middleHalf permissible error in the middle half, its ends included, in percent of the span
 * @param upperQuarter permissible error in the highest quarter, in percent of the span
 * @param source where the limits come from
 */
public record GaugeClass(
        String standard, String grade, double lowerQuarter, double middleHalf, double upperQuarter, Source source)
        implements Serializable {

    /**
     * Checks the limits.
     *
     * @param standard the standard
     * @param grade grade or class
     * @param lowerQuarter percent of the span
     * @param middleHalf percent of the span
     * @param upperQuarter percent of the span
     * @param source where the limits come from
     * @throws OutOfRangeException if a limit is not above 0 % and up to 100 %
     */
    public GaugeClass {
        requirePercent(lowerQuarter);
        requirePercent(middleHalf);
        requirePercent(upperQuarter);
    }

    /**
     * A class with one limit over the whole span.
     *
     * @param standard the standard, or what the certificate says
     * @param grade grade or class
     * @param percent permissible error, in percent of the span
     * @param source where the limit comes from
     * @return the class
     * @throws OutOfRangeException if the limit is not above 0 % and up to 100 %
     */
    public static GaugeClass uniform(String standard, String grade, double percent, Source source) {
        return new GaugeClass(standard, grade, percent, percent, percent, source);
    }

    /**
     * The permissible error in a part of the scale.
     *
     * @param part where the reading stands
     * @return percent of the span
     */
    public double percentOfSpan(ScalePart part) {
        return switch (part) {
            case LOWER_QUARTER -> lowerQuarter;
            case MIDDLE_HALF -> middleHalf;
            case UPPER_QUARTER -> upperQuarter;
        };
    }

    /**
     * The class by its full name.
     *
     * @return such as {@code EN 837-1 class 1.6}
     */
    public String name() {
        return standard + " " + grade;
    }

    private static void requirePercent(double percent) {
        if (!(percent > 0 && percent / 100 <= 1)) {
            throw new OutOfRangeException(
                    "permissible error of a gauge",
                    percent + " %",
                    "above 0 and up to 100 percent of the span",
                    "take it from the gauge's dial or certificate");
        }
    }
}
