package org.ullage.loop;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import org.ullage.provenance.Source;
import org.ullage.quantity.Area;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * Contents counted up from the pipes and everything else that holds fluid, the expansion vessel left out. Immutable; every step
 * returns a new take-off.
 *
 * <pre>{@code
 * Contents contents = TakeOff.start()
 *         .pipe(PipeStandard.ASTM_B88_L, "3/4", Length.metres(120))
 *         .item("boiler", Volume.litres(18), 1)
 *         .contents();
 * }</pre>
 */
public final class TakeOff implements Serializable {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // the lists of List.copyOf and Stream.toList are serializable
    private final List<ContentsItem> items;

    private TakeOff(List<ContentsItem> items) {
        this.items = items;
    }

    /**
     * An empty list.
     *
     * @return the take-off without a line
     */
    public static TakeOff start() {
        return new TakeOff(List.of());
    }

    /**
     * Adds a length of pipe.
     *
     * @param standard the pipe standard
     * @param size a nominal size of it, in the spellings of {@link PipeStandard#size}
     * @param length zero or more
     * @return the take-off with it
     * @throws OutOfRangeException if the standard has no such size or the length is negative
     */
    public TakeOff pipe(PipeStandard standard, String size, Length length) {
        return pipe(standard.size(size).pipe(), length);
    }

    /**
     * Adds a length of any pipe.
     *
     * @param pipe the pipe
     * @param length zero or more
     * @return the take-off with it
     * @throws OutOfRangeException if the length is negative
     */
    public TakeOff pipe(Pipe pipe, Length length) {
        return pipe(pipe.name(), pipe, length);
    }

    /**
     * Adds a length of any pipe under a name of its own, such as that of a riser.
     *
     * @param name what it is
     * @param pipe the pipe
     * @param length zero or more
     * @return the take-off with it
     * @throws OutOfRangeException if the length is negative
     */
    public TakeOff pipe(String name, Pipe pipe, Length length) {
        VolumeRange volume = VolumeRange.exactly(pipe.contents(length));
        return add(new ContentsItem(name, Amount.of(length), volume, pipe, List.of(pipe.source())));
    }

    /**
     * Adds the loops of a heated floor: pipe of the length area / spacing. Runs to the manifold come on top.
     *
     * @param pipe the pipe
     * @param spacing distance from pipe to pipe, above zero
     * @param area heated area
     * @return the take-off with it
     * @throws OutOfRangeException if the spacing is zero or negative
     */
    public TakeOff floor(Pipe pipe, Length spacing, Area area) {
        if (spacing.si() <= 0) {
            throw new OutOfRangeException(
                    "pipe spacing",
                    spacing.text(Units.MILLIMETRE) + " (" + spacing.text(Units.INCH) + ")",
                    "above zero",
                    "give the distance from pipe to pipe");
        }
        return pipe("floor, " + pipe.name(), pipe, Length.ofSi(area.si() / spacing.si()));
    }

    /**
     * Adds items whose contents are known from their plate or data sheet.
     *
     * @param name what they are
     * @param each contents of one, above zero
     * @param count how many, 1 or more
     * @return the take-off with them
     * @throws OutOfRangeException if the contents are zero or negative or there is no item
     */
    public TakeOff item(String name, Volume each, int count) {
        return item(name, VolumeRange.exactly(each), count, Source.given());
    }

    /**
     * Adds items whose contents are known as a range.
     *
     * @param name what they are
     * @param each contents of one, above zero
     * @param count how many, 1 or more
     * @param source where the contents come from
     * @return the take-off with them
     * @throws OutOfRangeException if the contents are zero or negative or there is no item
     */
    public TakeOff item(String name, VolumeRange each, int count, Source source) {
        if (each.low().si() <= 0) {
            throw new OutOfRangeException(
                    "contents of " + name,
                    each.low().textInBothSystems(),
                    "above zero",
                    "take the water content from the plate or data sheet, or leave the item out if it holds none");
        }
        return add(ContentsItem.of(name, Amount.of(count), each.times(count), source));
    }

    /**
     * Adds a line, such as one of {@link PowerRule}, {@link PieceRule} or {@link RadiatorSection}.
     *
     * @param item the line
     * @return the take-off with it
     */
    public TakeOff add(ContentsItem item) {
        return new TakeOff(Stream.concat(items.stream(), Stream.of(item)).toList());
    }

    /**
     * The contents of everything added.
     *
     * @return a single value, or a range where an item has one
     * @throws MissingInputException if nothing was added
     * @throws OutOfRangeException if everything added has no length
     */
    public Contents contents() {
        return new Contents(ContentsBasis.TAKE_OFF, items, List.of());
    }
}
