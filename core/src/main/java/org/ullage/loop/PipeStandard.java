package org.ullage.loop;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ullage.quantity.OutOfRangeException;

/**
 * Pipe standards with a table of outside diameters and walls; contents follow from the two by geometry. Each size keeps its own
 * source, for some rows are read in print and some are remembered.
 */
@SuppressWarnings("ImmutableEnumChecker") // a PipeMaterial is an immutable record
public enum PipeStandard {
    /** Steel pipe, Schedule 40. Sizes NPS 1/8 to 24, also by DN. */
    ASME_B36_10_SCH_40("pipes-asme-b36-10.tsv", "Sch 40", PipeMaterial.STEEL, "ASME B36.10 Sch 40", "steel Sch 40"),
    /** Steel pipe, Schedule 80. Sizes NPS 1/8 to 24, also by DN. */
    ASME_B36_10_SCH_80("pipes-asme-b36-10.tsv", "Sch 80", PipeMaterial.STEEL, "ASME B36.10 Sch 80", "steel Sch 80"),
    /** Steel pipe, standard weight: Schedule 40 only up to NPS 10. Sizes NPS 1/8 to 24, also by DN. */
    ASME_B36_10_STD("pipes-asme-b36-10.tsv", "STD", PipeMaterial.STEEL, "ASME B36.10 STD", "steel STD"),
    /** Steel pipe, extra strong: Schedule 80 only up to NPS 8. Sizes NPS 1/8 to 24, also by DN. */
    ASME_B36_10_XS("pipes-asme-b36-10.tsv", "XS", PipeMaterial.STEEL, "ASME B36.10 XS", "steel XS"),
    /** Copper water tube, type K. Sizes 1/4 to 12. */
    ASTM_B88_K("pipes-astm-b88.tsv", "K", PipeMaterial.COPPER, "ASTM B88 type K", "copper K"),
    /** Copper water tube, type L. Sizes 1/4 to 12. */
    ASTM_B88_L("pipes-astm-b88.tsv", "L", PipeMaterial.COPPER, "ASTM B88 type L", "copper L"),
    /** Copper water tube, type M. Sizes 3/8 to 12. */
    ASTM_B88_M("pipes-astm-b88.tsv", "M", PipeMaterial.COPPER, "ASTM B88 type M", "copper M"),
    /** Copper tube by outside diameter and wall in mm, such as 22 x 1. */
    EN_1057("pipes-en-1057.tsv", "EN 1057", PipeMaterial.COPPER, "EN 1057"),
    /** Threadable steel tube, medium series. Sizes by DN or by the inch size of the thread. */
    EN_10255_MEDIUM("pipes-en-10255.tsv", "medium", PipeMaterial.STEEL, "EN 10255 medium", "EN 10255 M"),
    /** Threadable steel tube, heavy series. Sizes by DN or by the inch size of the thread. */
    EN_10255_HEAVY("pipes-en-10255.tsv", "heavy", PipeMaterial.STEEL, "EN 10255 heavy", "EN 10255 H"),
    /** PEX tube in copper tube sizes, SDR 9, by its average wall, as contents are printed. ASTM F877 alike. */
    ASTM_F876(
            "pipes-astm-f876.tsv",
            "average wall",
            PipeMaterial.RIGID,
            "ASTM F876 PEX SDR 9",
            "ASTM F876",
            "ASTM F877",
            "ASTM F876/F877 PEX SDR 9",
            "PEX",
            "PEX CTS"),
    /** PEX tube in copper tube sizes, SDR 9, by its minimum wall, as bores are printed: the largest contents. */
    ASTM_F876_MINIMUM_WALL(
            "pipes-astm-f876.tsv",
            "minimum wall",
            PipeMaterial.RIGID,
            "ASTM F876 PEX SDR 9 minimum wall",
            "ASTM F876 minimum wall"),
    /** PEX-AL-PEX composite pipe. Sizes 3/8 to 2, also by its four-figure designation such as 1216. */
    ASTM_F1281(
            "pipes-astm-f1281.tsv", "F1281", PipeMaterial.RIGID, "ASTM F1281 PEX-AL-PEX", "ASTM F1281", "PEX-AL-PEX"),
    /** CPVC pipe in iron pipe sizes, Schedule 40. */
    ASTM_F441_SCH_40("pipes-astm-f441.tsv", "Sch 40", PipeMaterial.RIGID, "ASTM F441 CPVC Sch 40", "CPVC Sch 40"),
    /** CPVC pipe in iron pipe sizes, Schedule 80. */
    ASTM_F441_SCH_80("pipes-astm-f441.tsv", "Sch 80", PipeMaterial.RIGID, "ASTM F441 CPVC Sch 80", "CPVC Sch 80"),
    /** CPVC tube in copper tube sizes, SDR 11. Sizes 1/2 to 2. */
    ASTM_D2846(
            "pipes-astm-d2846.tsv",
            "D2846",
            PipeMaterial.RIGID,
            "ASTM D2846 CPVC CTS SDR 11",
            "ASTM D2846",
            "CPVC CTS"),
    /** PE-X and PE-RT pipe, series S 3.2 (SDR 7.4). Sizes 12 to 160 mm outside diameter. */
    EN_ISO_15875_S3_2(
            "pipes-en-iso-15875.tsv", "S 3.2", PipeMaterial.RIGID, "EN ISO 15875 S 3.2", "EN ISO 22391 S 3.2"),
    /** PE-X and PE-RT pipe, series S 4 (SDR 9). Sizes 12 to 160 mm outside diameter. */
    EN_ISO_15875_S4("pipes-en-iso-15875.tsv", "S 4", PipeMaterial.RIGID, "EN ISO 15875 S 4", "EN ISO 22391 S 4"),
    /** PE-X and PE-RT pipe, series S 5 (SDR 11). Sizes 12 to 160 mm outside diameter. */
    EN_ISO_15875_S5("pipes-en-iso-15875.tsv", "S 5", PipeMaterial.RIGID, "EN ISO 15875 S 5", "EN ISO 22391 S 5"),
    /** PE-X and PE-RT pipe, series S 6.3 (SDR 13.6). Sizes 16 to 160 mm outside diameter. */
    EN_ISO_15875_S6_3(
            "pipes-en-iso-15875.tsv", "S 6.3", PipeMaterial.RIGID, "EN ISO 15875 S 6.3", "EN ISO 22391 S 6.3"),
    /** PE-X pipe, SDR 11. Sizes d16 to d160. */
    DIN_16893_SDR_11("pipes-din-16893.tsv", "SDR 11", PipeMaterial.RIGID, "DIN 16893 PE-X SDR 11"),
    /** PE-X pipe, SDR 7.4. Sizes d16 to d160. */
    DIN_16893_SDR_7_4("pipes-din-16893.tsv", "SDR 7.4", PipeMaterial.RIGID, "DIN 16893 PE-X SDR 7.4"),
    /** Floor heating and multilayer pipe by outside diameter and wall in mm, such as 16 x 2: usual sizes and any other. */
    METRIC_PLASTIC(
            "pipes-metric-plastic.tsv",
            "metric plastic",
            PipeMaterial.RIGID,
            "metric plastic",
            "metric multilayer",
            "multilayer");

    private final String file;
    private final String series;
    private final PipeMaterial material;
    private final String title;
    private final List<String> otherNames;

    PipeStandard(String file, String series, PipeMaterial material, String title, String... otherNames) {
        this.file = file;
        this.series = series;
        this.material = material;
        this.title = title;
        this.otherNames = List.of(otherNames);
    }

    /** Holds the tables, so that they are read when the first size is asked for. */
    private static final class Tables {

        private static final Map<PipeStandard, PipeTable> ALL = new EnumMap<>(PipeStandard.class);

        static {
            for (PipeStandard standard : values()) {
                ALL.put(standard, new PipeTable(standard, standard.file, standard.series));
            }
        }

        private static PipeTable of(PipeStandard standard) {
            PipeTable table = ALL.get(standard);
            if (table == null) {
                throw new IllegalStateException("no table was read for " + standard);
            }
            return table;
        }
    }

    /**
     * The standard with this name. Case, blanks, hyphens and words such as "type" don't matter.
     *
     * @param name such as {@code ASTM B88 type L}
     * @return the standard
     * @throws OutOfRangeException if it is none of those known here, which the message lists
     */
    public static PipeStandard named(String name) {
        String wanted = StandardName.squeezed(name);
        return Arrays.stream(values())
                .filter(standard -> standard.isNamed(wanted))
                .findFirst()
                .orElseThrow(() -> new OutOfRangeException(
                        "pipe standard",
                        Quoted.of(name),
                        "one of "
                                + Arrays.stream(values())
                                        .map(PipeStandard::title)
                                        .collect(Collectors.joining(", ")),
                        "take one of these, or describe the pipe by outside diameter and wall with Pipe.ofWall"));
    }

    private boolean isNamed(String wanted) {
        return StandardName.squeezed(title).equals(wanted)
                || otherNames.stream()
                        .anyMatch(name -> StandardName.squeezed(name).equals(wanted));
    }

    /**
     * The standard in words.
     *
     * @return such as {@code ASTM B88 type L}
     */
    public String title() {
        return title;
    }

    /**
     * Other names by which {@link #named} finds the standard.
     *
     * @return the names, may be empty
     */
    public List<String> otherNames() {
        return otherNames;
    }

    /**
     * What the pipe is made of. Plastic counts as rigid: no credit is taken for its growth, which is the safe side.
     *
     * @return the material
     */
    public PipeMaterial material() {
        return material;
    }

    /**
     * What the contents are based on, what tolerance of the pipe means for them, and slips in printed tables.
     *
     * @return one or more sentences
     */
    public String note() {
        return Tables.of(this).note();
    }

    /**
     * All sizes known here, in rising order.
     *
     * @return the sizes
     */
    public List<PipeSize> sizes() {
        return Tables.of(this).sizes();
    }

    /**
     * A size by its nominal name. Inches are written {@code 3/4}, {@code 1-1/2}, {@code 1 1/2}, {@code 1.5} or {@code NPS 2}, with
     * or without an inch mark; nominal diameters {@code DN 25}; outside diameter and wall {@code 22 x 1}; outside diameter alone,
     * where the standard fixes the wall, {@code d32} or {@code 32 mm}.
     *
     * @param size the nominal size
     * @return the size
     * @throws OutOfRangeException if the standard has no such size, or more than one could be meant; the message lists them
     */
    public PipeSize size(String size) {
        return Tables.of(this).find(size);
    }
}
