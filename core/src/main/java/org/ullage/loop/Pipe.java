package org.ullage.loop;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * A pipe as its contents see it: a round bore of some material. Sizes of a standard come from {@link PipeStandard#size}; any
 * other pipe is described here. Immutable.
 *
 * @param name in words, with the size
 * @param bore inside diameter, above zero
 * @param material what the pipe is made of, for the growth with temperature
 * @param source where the bore comes from
 */
public record Pipe(String name, Length bore, PipeMaterial material, Source source) implements Serializable {

    /** Digits of printed contents per length. */
    private static final int DIGITS = 4;

    /**
     * Checks the bore.
     *
     * @param name in words
     * @param bore inside diameter
     * @param material what the pipe is made of
     * @param source where the bore comes from
     * @throws OutOfRangeException if the bore is zero or negative, or so large that the contents per length are no finite number
     */
    public Pipe {
        if (bore.si() <= 0) {
            throw new OutOfRangeException(
                    "bore of " + name,
                    both(bore),
                    "above zero",
                    "give the inside diameter: outside diameter less twice the wall");
        }
        if (Units.LITRE.numberOf(area(bore)) > Double.MAX_VALUE) {
            throw new OutOfRangeException(
                    "bore of " + name,
                    bore.toString(),
                    "small enough for a finite number of litres per metre",
                    "check the number and its unit");
        }
    }

    /**
     * A pipe of the caller's by its bore.
     *
     * @param name in words
     * @param bore inside diameter, above zero
     * @param material what it is made of
     * @return the pipe
     * @throws OutOfRangeException if the bore is zero or negative
     */
    public static Pipe ofBore(String name, Length bore, PipeMaterial material) {
        return new Pipe(name, bore, material, Source.given());
    }

    /**
     * A pipe of the caller's by outside diameter and wall.
     *
     * @param name in words
     * @param outside outside diameter
     * @param wall wall thickness, above zero and less than half the outside diameter
     * @param material what it is made of
     * @return the pipe
     * @throws OutOfRangeException if the wall is zero or negative or leaves no bore
     */
    public static Pipe ofWall(String name, Length outside, Length wall, PipeMaterial material) {
        return new Pipe(name, bore(name, outside, wall), material, Source.given());
    }

    /** Outside diameter less twice the wall. */
    static Length bore(String name, Length outside, Length wall) {
        if (wall.si() <= 0 || wall.si() * 2 >= outside.si()) {
            throw new OutOfRangeException(
                    "wall of " + name,
                    both(wall),
                    "above zero and less than half the outside diameter " + both(outside),
                    "check the order, outside diameter first, and the units");
        }
        return outside.minus(wall.times(2));
    }

    /**
     * Fluid in a length of this pipe: pi / 4 x bore squared x length.
     *
     * @param length zero or more
     * @return the volume
     * @throws OutOfRangeException if the length is negative
     */
    public Volume contents(Length length) {
        if (length.si() < 0) {
            throw new OutOfRangeException(
                    "length of " + name,
                    both(length),
                    "zero or more",
                    "check the sign; lengths are added up, never taken off");
        }
        return Volume.ofSi(area(bore) * length.si());
    }

    /**
     * Contents per length in litres per metre.
     *
     * @return the number
     */
    public double litresPerMetre() {
        return Units.LITRE.numberOf(area(bore));
    }

    /**
     * Contents per length in US gallons per foot.
     *
     * @return the number
     */
    public double gallonsPerFoot() {
        return Units.US_GALLON.numberOf(area(bore)) / Units.FOOT.numberOf(1);
    }

    /** The section of the bore in square metres, which is cubic metres per metre too. */
    private static double area(Length bore) {
        double radius = bore.si() / 2;
        return Math.PI * radius * radius;
    }

    private static String both(Length length) {
        return length.text(Units.MILLIMETRE) + " (" + length.text(Units.INCH) + ")";
    }

    /**
     * The pipe with its contents per length.
     *
     * @param system metric or inch-pound
     * @return such as {@code EN 1057 22 x 1: 0.3142 L/m}
     */
    public String text(UnitSystem system) {
        String perLength = system == UnitSystem.SI
                ? Digits.significant(litresPerMetre(), DIGITS) + " L/m"
                : Digits.significant(gallonsPerFoot(), DIGITS) + " gal/ft";
        return name + ": " + perLength;
    }
}
