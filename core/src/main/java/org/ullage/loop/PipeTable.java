package org.ullage.loop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;

/** The sizes of one standard, read from its cited table, and the way from a written size to one of them. Immutable. */
final class PipeTable {

    private static final Pattern NEXT = Pattern.compile("; ");

    /** The key of an outside diameter with a wall. */
    private static final Pattern PAIR = Pattern.compile("[0-9]+(\\.[0-9]+)?x[0-9]+(\\.[0-9]+)?");

    /** A mark that every table with open pairs has for a pair that is no row of it. */
    private static final String UNLISTED = "c";

    private final PipeStandard standard;
    private final CitedTable table;
    private final List<PipeSize> sizes = new ArrayList<>();
    private final Map<String, Set<PipeSize>> byKey = new LinkedHashMap<>();

    PipeTable(PipeStandard standard, String file, String series) {
        this.standard = standard;
        this.table = CitedTable.read(Loop.class, file);
        boolean inches = table.header("Sizes").equals("inch");
        for (Map<String, String> row : table.rows()) {
            if (row.getOrDefault("series", "").equals(series)) {
                PipeSize size = size(row);
                sizes.add(size);
                spellings(row, inches)
                        .forEach(spelling -> SizeName.keysOfRow(spelling)
                                .forEach(key -> byKey.computeIfAbsent(key, unused -> new LinkedHashSet<>())
                                        .add(size)));
            }
        }
    }

    private PipeSize size(Map<String, String> row) {
        return new PipeSize(
                standard,
                row.getOrDefault("size", ""),
                length(row.getOrDefault("outside", "")),
                length(row.getOrDefault("wall", "")),
                table.source(row.getOrDefault("mark", "")));
    }

    private Length length(String number) {
        return Length.parse(number + " " + table.header("Unit"));
    }

    private static List<String> spellings(Map<String, String> row, boolean inches) {
        List<String> spellings = new ArrayList<>();
        spellings.add(row.getOrDefault("size", "") + (inches ? "\"" : ""));
        String also = row.getOrDefault("also", "");
        if (!also.isEmpty()) {
            spellings.addAll(List.of(NEXT.split(also)));
        }
        return spellings;
    }

    List<PipeSize> sizes() {
        return List.copyOf(sizes);
    }

    String note() {
        return table.header("Note");
    }

    PipeSize find(String text) {
        String key = SizeName.key(text);
        Set<PipeSize> found = byKey.getOrDefault(key, Set.of());
        if (found.size() > 1) {
            throw refused(text, "one size only, which is true of " + names(found), "write it so that it is clear");
        }
        return found.stream()
                .findFirst()
                .or(() -> unlisted(text, key))
                .orElseThrow(() -> refused(
                        text,
                        "one of " + names(sizes) + " (sizes: " + table.header("Sizes") + ")",
                        "take one of these, or describe the pipe by outside diameter and wall with Pipe.ofWall"));
    }

    /** A pair of outside diameter and wall that is no row of the table, where the table says that the size names both. */
    private Optional<PipeSize> unlisted(String text, String key) {
        String pairs = table.header("Pairs");
        if (pairs.equals("listed") || !PAIR.matcher(key).matches()) {
            return Optional.empty();
        }
        int times = key.indexOf('x');
        Length outside = length(key.substring(0, times));
        Length wall = length(key.substring(times + 1));
        boolean inSeries = sizes.stream().anyMatch(size -> size.outside().equals(outside))
                && sizes.stream().anyMatch(size -> size.wall().equals(wall));
        if (pairs.equals("series") && !inSeries) {
            return Optional.empty();
        }
        if (wall.si() <= 0 || outside.si() <= 2 * wall.si()) {
            throw refused(text, "such that the wall leaves a bore", "write the outside diameter first, then the wall");
        }
        Source source = table.source(UNLISTED);
        return Optional.of(new PipeSize(standard, key.replace("x", " x "), outside, wall, source));
    }

    private static String names(Iterable<PipeSize> sizes) {
        List<String> names = new ArrayList<>();
        sizes.forEach(size -> names.add(size.size()));
        return names.stream().collect(Collectors.joining(", "));
    }

    private OutOfRangeException refused(String text, String allowed, String remedy) {
        return new OutOfRangeException("size of " + standard.title(), Quoted.of(text), allowed, remedy);
    }
}
