package org.ullage.condition;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.workings.Caution;

/**
 * A metal part that the fluid touches. Immutable.
 *
 * @param name what it is and of which metal
 * @param wall its wall, above zero
 */
public record WettedMetal(String name, Length wall) implements Serializable {

    private static final Source PITTING =
            Source.commonPractice("usual care with loop fluids: pits go through the thinnest wall first");

    /**
     * Checks the wall.
     *
     * @param name what it is
     * @param wall its wall
     * @throws OutOfRangeException if the wall is zero or negative
     */
    public WettedMetal {
        if (wall.si() <= 0) {
            throw new OutOfRangeException(
                    "wall of " + name, wall.textInBothSystems(), "above zero", "measure or look it up");
        }
    }

    /**
     * The part that corrosion goes through first.
     *
     * @param parts what the fluid touches
     * @return the one with the thinnest wall, the first of several alike
     * @throws MissingInputException if no part is given
     */
    public static WettedMetal thinnest(List<WettedMetal> parts) {
        return parts.stream()
                .min(Comparator.comparing(WettedMetal::wall))
                .orElseThrow(() -> new MissingInputException(
                        "metal parts",
                        "the note on the thinnest metal",
                        "name the parts the fluid touches with their walls"));
    }

    /**
     * The note to leave for the next visit.
     *
     * @return which part to look at first
     */
    public Caution note() {
        return new Caution(
                "Thinnest metal the fluid touches: " + name + ", " + wall.text(Units.MILLIMETRE) + " ("
                        + wall.text(Units.INCH) + ")"
                        + ". Spent fluid goes through it first: look there for damp spots and rust at each visit.",
                PITTING);
    }
}
