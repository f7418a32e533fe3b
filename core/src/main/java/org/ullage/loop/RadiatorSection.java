package org.ullage.loop;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/**
 * One section of an old cast iron radiator and its rating in square feet of equivalent direct radiation (EDR). Immutable.
 *
 * @param type such as {@code 4 column} or {@code 6 tube}
 * @param height height of the section
 * @param squareFeetEdr rating of one section
 * @param radiator the kind, which tells the water per square foot
 * @param source where the rating comes from
 */
public record RadiatorSection(String type, Length height, double squareFeetEdr, Radiator radiator, Source source)
        implements Serializable {

    private static final List<RadiatorSection> ALL = read(CitedTable.read(Loop.class, "radiator-edr.tsv"));

    private static List<RadiatorSection> read(CitedTable table) {
        return table.rows().stream().map(row -> section(row, table)).toList();
    }

    private static RadiatorSection section(Map<String, String> row, CitedTable table) {
        return new RadiatorSection(
                row.getOrDefault("type", ""),
                Length.parse(row.get("height") + " in"),
                Double.parseDouble(row.getOrDefault("edr", "")),
                Radiator.valueOf(row.get("family") + "_RADIATOR"),
                table.source(row.getOrDefault("mark", "")));
    }

    /**
     * The sections known here.
     *
     * @return the sections by type and height
     */
    public static List<RadiatorSection> all() {
        return ALL;
    }

    /**
     * A section by type and height.
     *
     * @param type such as {@code 4 column} or {@code 6 tube}
     * @param height one of the heights the type was made in
     * @return the section
     * @throws OutOfRangeException if there is no such section; the message lists those there are
     */
    public static RadiatorSection of(String type, Length height) {
        return ALL.stream()
                .filter(section -> section.type.equals(type) && section.height.equals(height))
                .findFirst()
                .orElseThrow(() -> new OutOfRangeException(
                        "radiator section",
                        Quoted.of(type) + " of " + height.text(Units.INCH),
                        "one of " + ALL.stream().map(RadiatorSection::text).collect(Collectors.joining(", ")),
                        "measure the height of the section, or give square feet EDR or the contents themselves"));
    }

    private String text() {
        return type + " " + height.text(Units.INCH);
    }

    /**
     * The contents of radiators made of such sections.
     *
     * @param sections number of sections, 1 or more
     * @return a line for a list
     * @throws OutOfRangeException if there is no section
     */
    public ContentsItem item(int sections) {
        Amount amount = Amount.of(sections);
        return ContentsItem.of(
                text() + " radiator section",
                amount,
                radiator.item(squareFeetEdr * sections).volume(),
                radiator.source(),
                source);
    }
}
