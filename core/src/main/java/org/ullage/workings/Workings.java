package org.ullage.workings;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.UnitSystem;

/**
 * The steps of one answer in the order they were taken. Immutable.
 *
 * @param title what was worked out, and by which method
 * @param steps the steps
 */
public record Workings(String title, List<Step> steps) implements Serializable {

    /** Room for the number of a step; not locale-dependent formatting, so that the text is the same everywhere. */
    private static final int ORDINAL_WIDTH = 3;

    /**
     * Copies the steps.
     *
     * @param title what was worked out
     * @param steps the steps
     */
    public Workings {
        steps = List.copyOf(steps);
    }

    /**
     * The steps as aligned text: number, symbol, formula, the same with values, result, meaning and source.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        int width = steps.stream()
                .mapToInt(step -> step.result().symbol().length())
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder(title).append('\n');
        for (int i = 0; i < steps.size(); i++) {
            append(text, i + 1, steps.get(i), width, system);
        }
        return text.toString();
    }

    private static void append(StringBuilder text, int number, Step step, int width, UnitSystem system) {
        String indent = " ".repeat(ORDINAL_WIDTH + 2 + width);
        String ordinal = Integer.toString(number);
        String symbol = step.result().symbol();
        text.append(" ".repeat(Math.max(0, ORDINAL_WIDTH - ordinal.length()))).append(ordinal);
        text.append("  ").append(symbol).append(" ".repeat(width - symbol.length()));
        if (step.terms().isEmpty()) {
            text.append(" = ")
                    .append(step.result().text(system))
                    .append("  (")
                    .append(step.formula())
                    .append(")\n");
        } else {
            text.append(" = ").append(step.formula()).append('\n');
            String substituted = step.substituted(system);
            String result = step.result().text(system);
            if (!substituted.equals(result)) {
                text.append(indent).append(" = ").append(substituted).append('\n');
            }
            text.append(indent).append(" = ").append(result).append('\n');
        }
        text.append(indent).append("   ").append(step.meaning()).append('\n');
        text.append(indent).append("   ").append(step.source()).append('\n');
    }
}
