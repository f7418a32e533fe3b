package org.ullage.operation;

import java.io.Serializable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/**
 * A pipe wall that gives way to the pressure inside: its volume grows by k = d / (2 E w) (2.5 - 2 nu) for each unit of pressure.
 * Immutable.
 *
 * @param material what it is made of
 * @param bore inside diameter d, above zero
 * @param thickness wall thickness w, above zero
 */
public record PipeWall(WallMaterial material, Length bore, Length thickness) implements Serializable {

    /** The formula for liquid locked in pipe. */
    static final Source BLOCKED_IN = Source.secondHand(
            "API Standard 521",
            "2007, liquid expansion in blocked-in piping",
            "an openly readable excerpt of the standard");

    private static final Constant ENDS = new Constant("c", 2.5, "1", BLOCKED_IN);

    /**
     * Checks the lengths.
     *
     * @param material what it is made of
     * @param bore above zero
     * @param thickness above zero
     * @throws OutOfRangeException if a length is zero or negative, or the wall so thin that its stretch is no finite number
     */
    public PipeWall {
        requirePositive("bore", bore);
        requirePositive("wall thickness", thickness);
        if (!Double.isFinite(stretch(material, bore, thickness))) {
            throw new OutOfRangeException(
                    "wall thickness",
                    thickness.toString(),
                    "thick enough for a finite stretch of a bore of " + bore,
                    "check the numbers and their units");
        }
    }

    private static void requirePositive(String name, Length length) {
        if (length.si() <= 0) {
            throw new OutOfRangeException(
                    name,
                    length.text(Units.MILLIMETRE) + " (" + length.text(Units.INCH) + ")",
                    "above zero",
                    "take it from the table of the pipe standard");
        }
    }

    /**
     * What the pipe's volume grows by for each pascal.
     *
     * @return k in 1/Pa
     */
    public double stretchSi() {
        return stretch(material, bore, thickness);
    }

    private static double stretch(WallMaterial material, Length bore, Length thickness) {
        return bore.si() / (2 * material.modulus().si() * thickness.si()) * (ENDS.value() - 2 * material.poisson());
    }
}
