package org.ullage.fluids;

import java.io.BufferedReader;
import java.io.Reader;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ullage.provenance.Source;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/**
 * A density table of the user's own, read from text, checked, and turned into fluids. Immutable.
 *
 * <p>The text is a header and a row a line, cells parted by comma, semicolon or tab (the header decides), decimals with a point;
 * blank lines and lines beginning with {@code #} are left out. Columns in any order: {@code temperature}, {@code density} and,
 * for mixtures, {@code concentration}; others are ignored. Units stand in the header or beside each number:
 *
 * <pre>
 * concentration [vol%], temperature [degC], density [kg/m3]
 * 30, 0, 1036.24
 * 30, 5, 1034.46
 * </pre>
 *
 * <p>At each concentration there have to be three rows or more, at different temperatures. Density has to fall with temperature,
 * but for a maximum below 10 degC, and from five rows up no row may break the smoothness of the others; {@link
 * #readWithoutOutlierCheck} leaves the last check out. Between rows the density follows an Akima spline (a natural cubic spline
 * through three or four rows); between concentrations a polynomial through up to four of them. Nothing is extrapolated.
 */
public final class UserFluidTable implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int FEWEST_ROWS = 3;

    /** Rows nearer than this are taken for the same temperature, K. */
    private static final double LEAST_STEP = 0.01;

    private final String name;
    private final Source source;
    private final DensitySurface surface;
    private final boolean hasConcentration;
    private final boolean byMass;

    private UserFluidTable(String name, Source source, DensityCsv csv, boolean checkOutliers) {
        this.name = name;
        this.source = source;
        this.hasConcentration = csv.hasConcentration();
        this.byMass = csv.byMass();
        Map<Double, List<DensityRow>> columns = new TreeMap<>();
        csv.rows()
                .forEach(row -> columns.computeIfAbsent(row.percent(), percent -> new ArrayList<>())
                        .add(row));
        requireRows(columns.isEmpty() ? 0 : FEWEST_ROWS, name);
        this.surface = new DensitySurface(
                columns.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                columns.entrySet().stream()
                        .map(column -> column(label(column.getKey()), column.getValue(), checkOutliers))
                        .toArray(PiecewiseCubic[]::new));
    }

    /**
     * Reads and checks a table.
     *
     * @param name the fluid for people
     * @param csv the table as text
     * @param source where the table comes from
     * @return the table
     * @throws OutOfRangeException if the header or a row is not as described, or a check fails; it names the row
     * @throws org.ullage.quantity.UnreadableQuantityException if a cell is not a number with a known unit
     */
    public static UserFluidTable read(String name, String csv, Source source) {
        return new UserFluidTable(
                name, source, DensityCsv.read(name, csv.lines().toList()), true);
    }

    /**
     * Reads and checks a table, as {@link #read(String, String, Source)}.
     *
     * @param name the fluid for people
     * @param csv the table; read to its end, not closed
     * @param source where the table comes from
     * @return the table
     * @throws OutOfRangeException if the header or a row is not as described, or a check fails; it names the row
     * @throws org.ullage.quantity.UnreadableQuantityException if a cell is not a number with a known unit
     * @throws java.io.UncheckedIOException if the reader fails
     */
    public static UserFluidTable read(String name, Reader csv, Source source) {
        List<String> lines = new BufferedReader(csv).lines().toList();
        return new UserFluidTable(name, source, DensityCsv.read(name, lines), true);
    }

    /**
     * Reads a table that is known to be rough: everything is checked but its smoothness.
     *
     * @param name the fluid for people
     * @param csv the table as text
     * @param source where the table comes from
     * @return the table
     * @throws OutOfRangeException if the header or a row is not as described, or density rises with temperature
     * @throws org.ullage.quantity.UnreadableQuantityException if a cell is not a number with a known unit
     */
    public static UserFluidTable readWithoutOutlierCheck(String name, String csv, Source source) {
        return new UserFluidTable(
                name, source, DensityCsv.read(name, csv.lines().toList()), false);
    }

    /**
     * The fluid of a table without concentrations.
     *
     * @return the fluid
     * @throws OutOfRangeException if the table has concentrations
     */
    public UserFluid fluid() {
        if (hasConcentration) {
            throw basis("none", "stated, since the table has a column of it");
        }
        return fluid(name, 0, "density table");
    }

    /**
     * The mixture at a concentration, from a table by volume.
     *
     * @param volume between the table's lowest and highest concentration
     * @return the fluid
     * @throws OutOfRangeException if the table is not by volume or does not reach the concentration
     */
    public UserFluid at(VolumeFraction volume) {
        if (!hasConcentration || byMass) {
            throw basis(volume.text(Units.VOLUME_PERCENT), byMass ? "by mass, as in the table" : "left out");
        }
        String text = volume.text(Units.VOLUME_PERCENT);
        return fluid(name + " " + text, volume.in(Units.VOLUME_PERCENT), "density table at " + text);
    }

    /**
     * The mixture at a concentration, from a table by mass.
     *
     * @param mass between the table's lowest and highest concentration
     * @return the fluid
     * @throws OutOfRangeException if the table is not by mass or does not reach the concentration
     */
    public UserFluid at(MassFraction mass) {
        if (!hasConcentration || !byMass) {
            throw basis(mass.text(Units.MASS_PERCENT), hasConcentration ? "by volume, as in the table" : "left out");
        }
        String text = mass.text(Units.MASS_PERCENT);
        return fluid(name + " " + text, mass.in(Units.MASS_PERCENT), "density table at " + text);
    }

    private UserFluid fluid(String fullName, double percent, String model) {
        if (!(percent >= surface.least() && percent <= surface.most())) {
            throw new OutOfRangeException(
                    "concentration of " + name,
                    percent + " %",
                    surface.least() + " to " + surface.most() + " % in the table",
                    "give a concentration inside the table, or a table that reaches further");
        }
        PiecewiseCubic density = surface.at(percent);
        return new UserFluid(
                fullName,
                model,
                source,
                density.first() + Celsius.ZERO,
                density.last() + Celsius.ZERO,
                (kelvins, pascals) -> 1 / density.value(kelvins - Celsius.ZERO));
    }

    private OutOfRangeException basis(String value, String allowed) {
        return new OutOfRangeException(
                "concentration of " + name,
                value,
                allowed,
                "the table does not tell how to convert: state the concentration as the table does");
    }

    private String label(double percent) {
        return hasConcentration ? name + " " + percent + (byMass ? " mass%" : " vol%") : name;
    }

    private static PiecewiseCubic column(String label, List<DensityRow> unsorted, boolean checkOutliers) {
        List<DensityRow> rows = unsorted.stream()
                .sorted(Comparator.comparingDouble(DensityRow::celsius))
                .toList();
        requireRows(rows.size(), label);
        requireSteps(label, rows);
        DensityChecks.requireFalling(label, rows);
        if (checkOutliers) {
            DensityChecks.requireSmooth(label, rows);
        }
        return PiecewiseCubic.through(
                rows.stream().mapToDouble(DensityRow::celsius).toArray(),
                rows.stream().mapToDouble(DensityRow::density).toArray());
    }

    private static void requireRows(int count, String label) {
        if (count < FEWEST_ROWS) {
            throw new OutOfRangeException(
                    "number of rows in the density table of " + label,
                    count + " rows",
                    FEWEST_ROWS + " or more",
                    "add rows");
        }
    }

    private static void requireSteps(String label, List<DensityRow> rows) {
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).celsius() - rows.get(i - 1).celsius() < LEAST_STEP) {
                throw new OutOfRangeException(
                        "temperature in the density table of " + label,
                        rows.get(i).temperature(),
                        "at least " + LEAST_STEP + " K from the other rows",
                        "take one of the two rows out");
            }
        }
    }
}
