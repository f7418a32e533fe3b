package org.ullage.record;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.UnitSystem;

/** A record on paper: lines of label and value, with {@code not recorded} where there is none. */
final class RecordLines {

    /** What stands where nothing is known. */
    static final String NOT_RECORDED = "not recorded";

    private static final int LABEL_WIDTH = 28;
    private static final int VALUE_WIDTH = 80;

    private final UnitSystem system;
    private final StringBuilder text = new StringBuilder();

    RecordLines(UnitSystem system) {
        this.system = system;
    }

    RecordLines title(String title) {
        PlainText.wrapped(title, LABEL_WIDTH + VALUE_WIDTH)
                .forEach(line -> text.append(line).append('\n'));
        return this;
    }

    /** A text of the caller's, or a plain word. */
    RecordLines line(String label, @Nullable String value) {
        List<String> lines = PlainText.wrapped(value == null ? NOT_RECORDED : value, VALUE_WIDTH);
        for (int i = 0; i < lines.size(); i++) {
            String before = i == 0 ? "  " + label + ": " : "";
            text.append(before)
                    .append(" ".repeat(Math.max(0, LABEL_WIDTH - before.length())))
                    .append(lines.get(i))
                    .append('\n');
        }
        return this;
    }

    RecordLines line(String label, @Nullable Quantity<?, ?> value) {
        return line(label, text(value));
    }

    /** A quantity at a temperature or with another that belongs to it. */
    RecordLines line(String label, @Nullable Quantity<?, ?> value, String joint, @Nullable Quantity<?, ?> at) {
        return line(label, value == null && at == null ? null : text(value) + " " + joint + " " + text(at));
    }

    RecordLines line(String label, @Nullable Boolean value) {
        return line(label, value == null ? null : value ? "yes" : "no");
    }

    private String text(@Nullable Quantity<?, ?> value) {
        return value == null ? NOT_RECORDED : value.text(system);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
