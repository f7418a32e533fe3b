package org.ullage.loop;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * A line of a written take-off: a pipe by standard, size and length, or an item by its volume. Cells are text with units; a cell
 * that is blank or left out is not given. Immutable.
 *
 * <table>
 * <caption>Columns</caption>
 * <tr><td>item</td><td>what it is; may be blank for a pipe</td></tr>
 * <tr><td>standard</td><td>pipe standard, as {@link PipeStandard#named} reads it</td></tr>
 * <tr><td>size</td><td>nominal size, as {@link PipeStandard#size} reads it</td></tr>
 * <tr><td>length</td><td>pipe length, such as {@code 120 m}</td></tr>
 * <tr><td>count</td><td>whole number of items, or of equal lengths of pipe; blank is one</td></tr>
 * <tr><td>volume</td><td>contents of one item, such as {@code 18 L} or {@code 15 gal to 30 gal}</td></tr>
 * </table>
 *
 * @param cells text by column
 */
public record TakeOffRow(Map<String, String> cells) implements Serializable {

    /** The columns. */
    public static final List<String> COLUMNS = List.of("item", "standard", "size", "length", "count", "volume");

    private static final Pattern WHOLE = Pattern.compile("0*[1-9][0-9]{0,5}");

    /**
     * Copies the cells and checks their columns.
     *
     * @param cells text by column
     * @throws OutOfRangeException if a column is not one of {@link #COLUMNS}
     */
    public TakeOffRow {
        cells = Map.copyOf(cells);
        for (String column : cells.keySet()) {
            if (!COLUMNS.contains(column)) {
                throw new OutOfRangeException(
                        "column",
                        Quoted.of(column),
                        "one of " + String.join(", ", COLUMNS),
                        "rename it or leave it out");
            }
        }
    }

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
        return cell("standard").isEmpty() ? addItem(takeOff) : addPipe(takeOff);
    }

    private String cell(String column) {
        return cells.getOrDefault(column, "").strip();
    }

    private TakeOff addPipe(TakeOff takeOff) {
        refuse("volume", "a pipe's contents follow from its size: leave volume blank, or standard");
        Pipe pipe = PipeStandard.named(cell("standard"))
                .size(needed("size", "a pipe", "give its nominal size"))
                .pipe();
        Length each = Length.parse(needed("length", "a pipe", "give its length with a unit, such as 120 m"));
        String name = cell("item").isEmpty() ? pipe.name() : cell("item") + ", " + pipe.name();
        return takeOff.pipe(name, pipe, each.times(number()));
    }

    private TakeOff addItem(TakeOff takeOff) {
        refuse("size", "a size belongs to a pipe: give its standard too");
        refuse("length", "a length belongs to a pipe: give its standard and size too");
        String name = needed("item", "a line without a pipe standard", "name the item, or the standard of the pipe");
        String each = needed("volume", "item " + Quoted.of(name), "give what one holds, from its plate or data sheet");
        return takeOff.item(name, VolumeRange.parse(each), number(), Source.given());
    }

    private int number() {
        String count = cell("count");
        if (count.isEmpty()) {
            return 1;
        }
        if (!WHOLE.matcher(count).matches()) {
            throw new OutOfRangeException(
                    "count", Quoted.of(count), "a whole number from 1 to 999999", "write it in digits without a unit");
        }
        return Integer.parseInt(count);
    }

    private String needed(String column, String by, String remedy) {
        String cell = cell(column);
        if (cell.isEmpty()) {
            throw new MissingInputException(column, by, remedy);
        }
        return cell;
    }

    private void refuse(String column, String remedy) {
        String cell = cell(column);
        if (!cell.isEmpty()) {
            throw new OutOfRangeException(column, Quoted.of(cell), "blank in this line", remedy);
        }
    }
}
