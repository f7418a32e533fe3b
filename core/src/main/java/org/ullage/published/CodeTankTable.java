package org.ullage.published;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * The printed tables of least tank capacity in US codes, all for an average of 195 degF, filled to 12 psig, at most 30 psig, with the
 * code formula beside each cell. Contents are those of boiler, radiation and piping, not of the tank. Contents between two rows take
 * the next larger row; contents above the last row are refused. Immutable.
 *
 * <p>Cells are rounded, some of them down, so a table is not a safe upper bound: {@link Cell#isRoundedDown()} tells. To size by the
 * formula without rounding take {@link Methods#IRC_M2003} or {@link Methods#ASME_IV}.
 *
 * @param title the code and the table
 * @param rows smallest contents first
 * @param source where the printed cells come from
 */
public record CodeTankTable(String title, List<Row> rows, Source source) implements Serializable {

    private static final Source MICHIGAN = Source.published("Michigan Administrative Code R 408.4272", "table 272B");

    private static final Source IMC = Source.fromMemory(
            "International Mechanical Code, table 1009.2, and Uniform Mechanical Code, forced systems",
            "its plain column equals Michigan R 408.4272, table 272B");

    private static final Source IRC = Source.fromMemory("International Residential Code", "table M2003.2");

    /** Michigan R 408.4272, table 272B, forced circulation: plain tanks only. */
    public static final CodeTankTable MICHIGAN_272B =
            table("Michigan R 408.4272, table 272B", MICHIGAN, new double[][] {
                {100, 15}, {200, 30}, {300, 45}, {400, 60}, {500, 75}, {1000, 150}, {2000, 300}
            });

    /** IMC table 1009.2, the same as the UMC table for forced systems. */
    public static final CodeTankTable IMC_1009_2 = table("IMC table 1009.2", IMC, new double[][] {
        {100, 15, 9}, {200, 30, 17}, {300, 45, 25}, {400, 60, 33}, {500, 75, 42}, {1000, 150, 83}, {2000, 300, 165}
    });

    /** IRC table M2003.2. */
    public static final CodeTankTable IRC_M2003_2 = table("IRC table M2003.2", IRC, new double[][] {
        {10, 1.5, 1}, {20, 3, 1.5}, {30, 4.5, 2.5}, {40, 6, 3}, {50, 7.5, 4},
        {60, 9, 5}, {70, 10.5, 6}, {80, 12, 6.5}, {90, 13.5, 7.5}, {100, 15, 8}
    });

    /**
     * A printed row.
     *
     * @param contents contents of the system
     * @param plain least plain tank
     * @param diaphragm least pressurised diaphragm tank, or null if the table has no such column
     */
    public record Row(
            Volume contents, Volume plain, @Nullable Volume diaphragm) implements Serializable {}

    /**
     * A cell with the formula beside it.
     *
     * @param contents the row's contents
     * @param printed what the table says
     * @param formula what the code formula gives for the row's contents, not rounded
     * @param source where the printed number comes from
     */
    public record Cell(Volume contents, Volume printed, Volume formula, Source source) implements Serializable {

        /**
         * Whether the table is below the formula it was made from.
         *
         * @return true if the printed tank is the smaller one
         */
        public boolean isRoundedDown() {
            return printed.compareTo(formula) < 0;
        }

        /**
         * The cell in words.
         *
         * @return one line
         */
        @Override
        public String toString() {
            return "up to " + contents.text(UnitSystem.IP) + ": " + printed.text(UnitSystem.IP) + ", by the formula "
                    + formula.text(UnitSystem.IP) + (isRoundedDown() ? ", rounded down " : " ") + source;
        }
    }

    /**
     * Copies the rows.
     *
     * @param title the code and the table
     * @param rows smallest contents first
     * @param source where the printed cells come from
     * @throws OutOfRangeException if there is no row
     */
    public CodeTankTable {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new OutOfRangeException("number of rows of " + title, "0", "1 or more", "give the rows of the table");
        }
    }

    private static CodeTankTable table(String title, Source source, double[][] gallons) {
        return new CodeTankTable(
                title, Arrays.stream(gallons).map(CodeTankTable::row).toList(), source);
    }

    private static Row row(double[] gallons) {
        Volume diaphragm = gallons.length > 2 ? Volume.gallons(gallons[2]) : null;
        return new Row(Volume.gallons(gallons[0]), Volume.gallons(gallons[1]), diaphragm);
    }

    /**
     * Looks a tank up.
     *
     * @param contents of boiler, radiation and piping
     * @param kind plain steel, or diaphragm and bladder for the pressurised column
     * @return the cell of the row for these contents or, between two rows, the next larger one
     * @throws OutOfRangeException if the contents are above the last row, or the table has no column for the kind
     */
    public Cell lookUp(Volume contents, VesselKind kind) {
        Row row = rows.stream()
                .filter(candidate -> contents.compareTo(candidate.contents()) <= 0)
                .findFirst()
                .orElseThrow(() -> aboveLastRow(contents));
        Volume printed = printed(row, kind);
        Volume formula = row.contents().times(IrcM2003Method.volumePerContents(kind));
        return new Cell(row.contents(), printed, formula, source);
    }

    private Volume printed(Row row, VesselKind kind) {
        Volume pressurised = row.diaphragm();
        if (kind == VesselKind.PLAIN_STEEL) {
            return row.plain();
        }
        if (kind == VesselKind.OPEN || pressurised == null) {
            throw new OutOfRangeException(
                    "vessel kind", kind.word(), "one that " + title + " has a column for", "size it by a method");
        }
        return pressurised;
    }

    private OutOfRangeException aboveLastRow(Volume contents) {
        return new OutOfRangeException(
                "contents",
                contents.text(UnitSystem.IP) + " (" + contents.text(UnitSystem.SI) + ")",
                "at or below the last row of " + title + ", "
                        + rows.get(rows.size() - 1).contents().text(UnitSystem.IP),
                "size it by the formula, method asme-iv");
    }
}
