package org.ullage.examples.contents;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ullage.examples.file.SheetLine;
import org.ullage.loop.ContentsItem;
import org.ullage.loop.TakeOff;
import org.ullage.loop.TakeOffRow;

/**
 * One line of the file.
 *
 * @param sheet its cells
 */
record TakeOffLine(SheetLine sheet) {

    /** What names the line in the answer to it. */
    String name() {
        return Stream.of("item", "standard", "size")
                .map(sheet::cell)
                .filter(cell -> !cell.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** Whether its length or volume is written in feet, inches, gallons or cubic feet. */
    boolean isInchPound() {
        return Stream.of("length", "volume")
                .map(sheet::cell)
                .anyMatch(cell -> cell.matches(".*(ft|in|gal|gallons?|ft3)"));
    }

    /**
     * Its contents.
     *
     * @throws IllegalArgumentException if it cannot be read, with the reason for people
     */
    ContentsItem read() {
        sheet.requireWhole();
        return new TakeOffRow(sheet.cells())
                .addTo(TakeOff.start())
                .contents()
                .items()
                .get(0);
    }
}
