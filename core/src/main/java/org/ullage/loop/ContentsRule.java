package org.ullage.loop;

import java.util.Map;
import java.util.stream.Collectors;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Volume;

/**
 * One row of the rules of thumb for single parts: what one kilowatt, piece, area or square foot EDR of it holds.
 *
 * @param what the part in words
 * @param per what the contents are for one of
 * @param each what one of it holds
 * @param source where the rule comes from
 */
record ContentsRule(String what, String per, VolumeRange each, Source source) {

    private static final Map<String, ContentsRule> ALL = read(CitedTable.read(Loop.class, "contents-rules.tsv"));

    private static Map<String, ContentsRule> read(CitedTable table) {
        return table.rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> cell(row, "rule"), row -> rule(row, table)));
    }

    private static ContentsRule rule(Map<String, String> row, CitedTable table) {
        Volume low = volume(row, "low");
        Volume high = volume(row, "high");
        VolumeRange each = cell(row, "typical").isEmpty()
                ? VolumeRange.between(low, high)
                : new VolumeRange(low, volume(row, "typical"), high);
        return new ContentsRule(cell(row, "what"), cell(row, "per"), each, table.source(cell(row, "mark")));
    }

    private static Volume volume(Map<String, String> row, String column) {
        return Volume.parse(cell(row, column) + " " + cell(row, "unit"));
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }

    /** The rule of an enumeration constant, found by its name. */
    static ContentsRule of(Enum<?> constant) {
        ContentsRule rule = ALL.get(constant.name());
        if (rule == null) {
            throw new IllegalStateException("the jar is damaged: no contents rule " + constant.name());
        }
        return rule;
    }

    /** A line for so much of the part. */
    ContentsItem item(Amount amount, double number) {
        return ContentsItem.of(what, amount, each.times(number), source);
    }
}
