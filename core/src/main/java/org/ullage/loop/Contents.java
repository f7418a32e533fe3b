package org.ullage.loop;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/**
 * The fluid in a loop, cold and without the expansion vessel: low, typical and high, how it is known, and the list it is the
 * sum of. Made by {@link MeasuredContents}, {@link TakeOff}, {@link QuickEstimate}, or from two readings on a loop in use.
 * Immutable.
 *
 * @param basis how it is known
 * @param items the lines it is the sum of, at least one
 * @param cautions what the reader must know about it
 */
public record Contents(ContentsBasis basis, List<ContentsItem> items, List<Caution> cautions) implements Serializable {

    /**
     * Copies the lists and checks the sum.
     *
     * @param basis how it is known
     * @param items the lines
     * @param cautions what the reader must know
     * @throws MissingInputException if there is no line
     * @throws OutOfRangeException if the sum is not above zero
     */
    public Contents {
        items = List.copyOf(items);
        cautions = List.copyOf(cautions);
        if (items.isEmpty()) {
            throw new MissingInputException(
                    "a pipe or an item", "a list of contents", "add the boiler, the emitters and the pipes");
        }
        VolumeRange sum = sum(items);
        if (sum.low().si() <= 0) {
            throw new OutOfRangeException(
                    "lowest contents",
                    sum.low().textInBothSystems(),
                    "above zero",
                    "check the lines: what is taken off, or the uncertainty, is as large as the contents");
        }
    }

    private static VolumeRange sum(List<ContentsItem> items) {
        return items.stream()
                .map(ContentsItem::volume)
                .reduce(VolumeRange::plus)
                .orElseThrow();
    }

    /**
     * The contents with the uncertainty they are known to.
     *
     * @return the sum of the lines, end by end
     */
    public VolumeRange range() {
        return sum(items);
    }

    /**
     * The lowest contents.
     *
     * @return the low end
     */
    public Volume low() {
        return range().low();
    }

    /**
     * The most likely contents.
     *
     * @return the typical value
     */
    public Volume typical() {
        return range().typical();
    }

    /**
     * The highest contents.
     *
     * @return the high end
     */
    public Volume high() {
        return range().high();
    }

    /**
     * The contents to size a vessel for: the high end, because a vessel that is too large only costs money and one that is too
     * small lifts the relief valve.
     *
     * @return the same as {@link #high()}
     */
    public Volume forSizing() {
        return high();
    }

    /**
     * Every source behind the contents, each once, in the order of the lines.
     *
     * @return the sources
     */
    public List<Source> sources() {
        return items.stream()
                .flatMap(item -> item.sources().stream())
                .distinct()
                .toList();
    }

    /**
     * What the pipes are made of, each material once. More than one means that no single pipe credit is right: take the
     * smallest.
     *
     * @return the materials in the order of the lines, empty if there is no pipe
     */
    public List<PipeMaterial> pipeMaterials() {
        return items.stream()
                .map(ContentsItem::pipe)
                .filter(Objects::nonNull)
                .map(Pipe::material)
                .distinct()
                .toList();
    }

    /**
     * How much there is of each pipe, the lengths of its lines added up.
     *
     * @return length by the pipe's name, in the order of the lines
     */
    public Map<String, Length> pipeLengths() {
        Map<String, Length> lengths = new LinkedHashMap<>();
        for (ContentsItem item : items) {
            Pipe pipe = item.pipe();
            if (pipe != null) {
                lengths.merge(pipe.name(), Length.metres(item.amount().metric()), Length::plus);
            }
        }
        return Collections.unmodifiableMap(lengths);
    }

    /**
     * The list as cells: a header row, a row for each line, and the total.
     *
     * @param system metric or inch-pound
     * @return rows of equal length, fit for a table or a CSV file
     */
    public List<List<String>> table(UnitSystem system) {
        return ContentsText.table(this, system);
    }

    /**
     * The list as aligned text, with sources and cautions below it.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return ContentsText.text(this, system);
    }
}
