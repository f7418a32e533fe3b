package org.ullage.loop;

import java.util.regex.Pattern;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * A line of a written take-off: a pipe by standard, size and length, or an item by its volume. Cells are text with units, blank
 * where not given. Immutable.
 *
 * @param item what it is; may be blank for a pipe
 * @param standard pipe standard, as {@link PipeStandard#named} reads it
 * @param size nominal size, as {@link PipeStandard#size} reads it
 * @param length pipe length, such as {@code 120 m}
 * @param count whole number of items, or of equal lengths of pipe; blank is one
 * @param volume contents of one item, such as {@code 18 L} or {@code 15 gal to 30 gal}
 */
public record TakeOffRow(String item, String standard, String size, String length, String count, String volume) {

    private static final Pattern WHOLE = Pattern.compile("0*[1-9][0-9]{0,5}");

    /**
     * Adds the line to a take-off.
     *
     * @param takeOff the take-off so far
     * @return the take-off with this line
     * @throws MissingInputException if a cell that is needed is blank
     * @throws OutOfRangeException if a cell holds what is not allowed, or a cell is filled that does not belong to the line
     * @throws org.ullage.quantity.UnreadableQuantityException if a length or volume is not a number with a known unit
     */
    public TakeOff addTo(TakeOff takeOff) {
        return standard.isBlank() ? addItem(takeOff) : addPipe(takeOff);
    }

    private TakeOff addPipe(TakeOff takeOff) {
        refuse("volume", volume, "a pipe's contents follow from its size: leave volume blank, or standard");
        Pipe pipe = PipeStandard.named(standard)
                .size(needed("size", size, "a pipe", "give its nominal size"))
                .pipe();
        Length each = Length.parse(needed("length", length, "a pipe", "give its length with a unit, such as 120 m"));
        String name = item.isBlank() ? pipe.name() : item.strip() + ", " + pipe.name();
        return takeOff.pipe(name, pipe, each.times(number()));
    }

    private TakeOff addItem(TakeOff takeOff) {
        refuse("size", size, "a size belongs to a pipe: give its standard too");
        refuse("length", length, "a length belongs to a pipe: give its standard and size too");
        String name = needed("item or standard", item, "a line of a take-off", "name the item, or the pipe standard");
        String each = needed(
                "volume", volume, "item " + Quoted.of(name), "give what one holds, from its plate or data sheet");
        return takeOff.item(name.strip(), VolumeRange.parse(each), number(), Source.given());
    }

    private int number() {
        if (count.isBlank()) {
            return 1;
        }
        if (!WHOLE.matcher(count.strip()).matches()) {
            throw new OutOfRangeException(
                    "count", Quoted.of(count), "a whole number from 1 to 999999", "write it in digits without a unit");
        }
        return Integer.parseInt(count.strip());
    }

    private static String needed(String column, String cell, String by, String remedy) {
        if (cell.isBlank()) {
            throw new MissingInputException(column, by, remedy);
        }
        return cell;
    }

    private static void refuse(String column, String cell, String remedy) {
        if (!cell.isBlank()) {
            throw new OutOfRangeException(column, Quoted.of(cell), "blank in this line", remedy);
        }
    }
}
