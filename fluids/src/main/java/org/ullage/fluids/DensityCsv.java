package org.ullage.fluids;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ullage.quantity.Density;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/** Reads a user's density table from text. The form is described at {@link UserFluidTable}. */
final class DensityCsv {

    private static final Pattern HEADING =
            Pattern.compile("\\s*([^\\[(]*?)\\s*(?:[\\[(]\\s*([^\\])]*?)\\s*[\\])])?\\s*");
    private static final Pattern DECIMALS = Pattern.compile("\\d*\\.(\\d+)");

    private final String name;
    private final String separator;
    private final List<Heading> headings;
    private final List<DensityRow> rows = new ArrayList<>();
    private boolean byMass;

    /** A column with the unit of its numbers, or without if each number carries its own. */
    private record Heading(String name, String unit) {}

    private DensityCsv(String name, String header) {
        this.name = name;
        this.separator = header.contains("\t") ? "\t" : header.contains(";") ? ";" : ",";
        this.headings = headings(header);
        for (String wanted : List.of("temperature", "density")) {
            if (!has(wanted)) {
                throw new OutOfRangeException(
                        "header of the density table of " + name,
                        "\"" + header + "\"",
                        "a line with the columns temperature and density, and concentration if there are several",
                        "write such as \"temperature [degC], density [kg/m3]\"");
            }
        }
    }

    static DensityCsv read(String name, List<String> lines) {
        List<String> used = lines.stream()
                .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
                .toList();
        DensityCsv csv = new DensityCsv(name, used.isEmpty() ? "" : used.get(0));
        used.stream().skip(1).forEach(csv::add);
        return csv;
    }

    List<DensityRow> rows() {
        return List.copyOf(rows);
    }

    boolean hasConcentration() {
        return has("concentration");
    }

    boolean byMass() {
        return byMass;
    }

    private List<Heading> headings(String header) {
        List<Heading> found = new ArrayList<>();
        for (String cell : header.toLowerCase(Locale.ROOT).split(separator, -1)) {
            Matcher parts = HEADING.matcher(cell);
            String unit = parts.matches() && parts.group(2) != null ? parts.group(2) : "";
            found.add(new Heading(parts.matches() ? parts.group(1) : cell.strip(), unit));
        }
        return found;
    }

    private boolean has(String column) {
        return headings.stream().anyMatch(heading -> heading.name().equals(column));
    }

    private void add(String line) {
        String[] cells = line.split(separator, -1);
        if (cells.length != headings.size()) {
            throw new OutOfRangeException(
                    "row of the density table of " + name,
                    "\"" + line.strip() + "\" with " + cells.length + " cells",
                    headings.size() + " cells as in the header",
                    "separate the cells as the header does and write decimals with a point");
        }
        double percent = 0;
        double celsius = 0;
        double density = 0;
        double resolution = 0;
        for (int i = 0; i < cells.length; i++) {
            String text = withUnit(cells[i].strip(), headings.get(i).unit());
            switch (headings.get(i).name()) {
                case "temperature" -> celsius = Temperature.parse(unit(text)).in(Units.CELSIUS);
                case "density" -> {
                    density = Density.parse(text).si();
                    resolution = resolution(text);
                }
                case "concentration" -> percent = percent(text);
                default -> {
                    // columns of the user's own are left alone
                }
            }
        }
        rows.add(new DensityRow(percent, celsius, density, resolution));
    }

    private double percent(String text) {
        boolean mass = Units.MASS_PERCENT.otherNames().stream().anyMatch(text::endsWith)
                || text.endsWith(Units.MASS_PERCENT.symbol());
        if (!rows.isEmpty() && mass != byMass) {
            throw new OutOfRangeException(
                    "concentration in the density table of " + name,
                    "\"" + text + "\"",
                    byMass ? "by mass as in the rows before" : "by volume as in the rows before",
                    "state all concentrations of a table in one way");
        }
        byMass = mass;
        return mass
                ? MassFraction.parse(text).in(Units.MASS_PERCENT)
                : VolumeFraction.parse(text).in(Units.VOLUME_PERCENT);
    }

    private static String withUnit(String cell, String unit) {
        boolean bare = cell.matches("[-+0-9.eE]*");
        return bare && !unit.isEmpty() ? cell + " " + unit : cell;
    }

    /** Headers are read without regard to case; the symbols of temperature units have capitals. */
    private static String unit(String text) {
        return text.replaceFirst("(?i)deg\\s?c$", "degC")
                .replaceFirst("(?i)deg\\s?f$", "degF")
                .replaceFirst("(?<![a-zA-Z])c$", "C")
                .replaceFirst("(?<![a-zA-Z])f$", "F")
                .replaceFirst("(?<![a-zA-Z])k$", "K");
    }

    /** One unit of the last digit given. */
    private static double resolution(String density) {
        Matcher number = DECIMALS.matcher(density);
        int decimals = number.lookingAt() ? number.group(1).length() : 0;
        String one = decimals == 0 ? "1" : "0." + "0".repeat(decimals - 1) + "1";
        return Density.parse(density.replaceFirst("^[-+0-9.eE]+", one)).si();
    }
}
