package org.ullage.examples.size;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The cells of one line.
 *
 * @param cells as they stand in the file
 */
record LoopLine(Map<Column, String> cells) {

    /** The id, untouched. */
    String id() {
        return cells.getOrDefault(Column.ID, "");
    }

    /** What stands in a column without the blanks around it, or null if nothing does. */
    @Nullable
    String text(Column column) {
        String text = cells.getOrDefault(column, "").strip();
        return text.isEmpty() ? null : text;
    }

    boolean gives(Column column) {
        return text(column) != null;
    }
}
