package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Moment;
import org.ullage.quantity.OutOfRangeException;

/**
 * A beam on two supports with loads at any places, by superposition. Immutable.
 *
 * @param span distance of the supports, above zero
 * @param loads the loads, one or more, all between the supports
 */
public record SimpleBeam(Length span, List<PointLoad> loads) implements Serializable {

    /** Halvings of the span in the search for the place where the beam is level; each gives one more binary digit. */
    private static final int HALVINGS = 60;

    /**
     * Checks the places and copies the loads.
     *
     * @param span distance of the supports
     * @param loads the loads
     * @throws OutOfRangeException if the span is zero or negative, there is no load, or a load is beyond the span
     */
    public SimpleBeam {
        Inputs.requirePositive("span", span, "measure it between the supports");
        Inputs.requireCount("loads on the beam", loads.size(), 1, "give each vessel with its place");
        loads = List.copyOf(loads);
        for (PointLoad load : loads) {
            if (load.place().compareTo(span) > 0) {
                throw new OutOfRangeException(
                        "place of a load",
                        SupportText.both(load.place()),
                        "no further than the span " + SupportText.both(span),
                        "loads on an overhang are not covered");
            }
        }
    }

    /**
     * The same beam with a share of each load.
     *
     * @param share such as 0.5 for each of two beams under the same vessels
     * @return the beam
     * @throws OutOfRangeException if the share is negative or not finite
     */
    public SimpleBeam times(double share) {
        return new SimpleBeam(
                span,
                loads.stream()
                        .map(load -> new PointLoad(load.load().times(share), load.place()))
                        .toList());
    }

    /**
     * What the left support carries.
     *
     * @return sum of P (L - a) / L
     */
    public Force leftReaction() {
        return Force.ofSi(loads.stream()
                .mapToDouble(load -> load.load().si() * (1 - load.place().si() / span.si()))
                .sum());
    }

    /**
     * What the right support carries.
     *
     * @return sum of P a / L
     */
    public Force rightReaction() {
        return Force.ofSi(loads.stream()
                .mapToDouble(load -> load.load().si() * load.place().si() / span.si())
                .sum());
    }

    /**
     * The bending moment at a place.
     *
     * @param place distance from the left support, zero to the span
     * @return left reaction times the distance, less the loads to the left times theirs
     * @throws OutOfRangeException if the place is not on the beam
     */
    public Moment momentAt(Length place) {
        requireOnBeam(place);
        double x = place.si();
        return Moment.ofSi(leftReaction().si() * x
                - loads.stream()
                        .mapToDouble(load ->
                                load.load().si() * Math.max(0, x - load.place().si()))
                        .sum());
    }

    /**
     * The greatest bending moment; it is under one of the loads.
     *
     * @return the largest of the moments there
     */
    public Moment greatestMoment() {
        return Moment.ofSi(loads.stream()
                .mapToDouble(load -> momentAt(load.place()).si())
                .max()
                .orElse(0));
    }

    /**
     * How far a beam sags at a place.
     *
     * @param place distance from the left support, zero to the span
     * @param section the beam
     * @return sum of P b x (L^2 - b^2 - x^2) / (6 E I L), x and b measured from opposite ends
     * @throws OutOfRangeException if the place is not on the beam
     */
    public Length deflectionAt(Length place, BeamSection section) {
        requireOnBeam(place);
        return Length.ofSi(sag(place.si())
                / (section.elasticity().si() * section.secondMoment().si()));
    }

    /**
     * How far a beam sags where it sags most.
     *
     * @param section the beam
     * @return the greatest deflection
     */
    public Length greatestDeflection(BeamSection section) {
        // Loads only push down, so the beam is bent one way everywhere and its slope changes sign once.
        double left = 0;
        double right = span.si();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (left + right) / 2;
            if (slope(middle) > 0) {
                left = middle;
            } else {
                right = middle;
            }
        }
        return deflectionAt(Length.ofSi(left), section);
    }

    /** Deflection times E I. */
    private double sag(double x) {
        double length = span.si();
        double sum = 0;
        for (PointLoad load : loads) {
            double a = load.place().si();
            double far = x <= a ? length - a : a;
            double near = x <= a ? x : length - x;
            sum += load.load().si() * far * near * (length * length - far * far - near * near) / (2 * 3 * length);
        }
        return sum;
    }

    /** Slope times E I. */
    private double slope(double x) {
        double length = span.si();
        double sum = 0;
        for (PointLoad load : loads) {
            double a = load.place().si();
            double far = x <= a ? length - a : a;
            double near = x <= a ? x : length - x;
            double turn = x <= a ? 1 : -1;
            sum += turn * load.load().si() * far * (length * length - far * far - 3 * near * near) / (2 * 3 * length);
        }
        return sum;
    }

    private void requireOnBeam(Length place) {
        if (place.si() < 0 || place.compareTo(span) > 0) {
            throw new OutOfRangeException(
                    "place on the beam",
                    SupportText.both(place),
                    "from zero to the span " + SupportText.both(span),
                    "measure it from the left support");
        }
    }
}
