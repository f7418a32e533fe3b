package org.ullage.reference;

/**
 * A figure that an answer can meet, with its tolerance. Immutable.
 */
public final class Target {

    private static final String RELATIVE = "ppm";

    private static final double MILLIONTH = 1e-6;

    /** A figure printed from a tie (1.285 as 1.29) lies exactly on its tolerance; binary rounding must not put it outside. */
    private static final double TIE = 1 + 1e-9;

    private final Figure figure;
    private final String toleranceText;
    private final double tolerance;

    private Target(Figure figure, String toleranceText, double tolerance) {
        this.figure = figure;
        this.toleranceText = toleranceText;
        this.tolerance = tolerance * TIE;
    }

    /** Reads a figure and its tolerance, which has a unit of the same kind, or is a number of ppm of the figure. */
    static Target of(Measure measure, String figureText, String toleranceText) {
        Figure figure = Figure.of(measure, figureText);
        double tolerance = Figure.unit(toleranceText).equals(RELATIVE)
                ? Figure.number(toleranceText) * MILLIONTH * Math.abs(figure.si())
                : measure.readDeviation(toleranceText);
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("tolerance \"" + toleranceText + "\" must be above zero");
        }
        return new Target(figure, toleranceText, tolerance);
    }

    double si() {
        return figure.si();
    }

    double toleranceSi() {
        return tolerance;
    }

    /**
     * The figure as printed, with its unit.
     *
     * @return such as {@code 344 gal}
     */
    public String text() {
        return figure.text();
    }

    /**
     * The largest deviation that still meets the figure.
     *
     * @return such as {@code 0.5 gal}, or {@code 30 ppm} of the figure
     */
    public String tolerance() {
        return toleranceText;
    }

    /**
     * Whether a value meets the figure.
     *
     * @param si the value in coherent SI
     * @return true if it is within the tolerance
     */
    public boolean isMetBy(double si) {
        return Math.abs(si - figure.si()) <= tolerance;
    }

    /**
     * How far a value is from the figure, as a share of the figure.
     *
     * @param si the value in coherent SI
     * @return zero or more
     */
    public double relativeDeviation(double si) {
        return Math.abs((si - figure.si()) / figure.si());
    }

    /**
     * A value in the unit of the figure.
     *
     * @param si the value in coherent SI
     * @return with two digits more than the figure has
     */
    public String show(double si) {
        return figure.textOf(si);
    }

    /**
     * How far a value is from the figure, in the unit of the figure.
     *
     * @param si the value in coherent SI
     * @return two digits, with a sign
     */
    public String showDifference(double si) {
        return figure.differenceOf(si);
    }
}
