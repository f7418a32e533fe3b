package org.ullage.charge;

import java.util.List;
import org.ullage.provenance.Source;

/** The accuracy grades and classes of dial gauges that the standards know, finest first. */
public final class GaugeClasses {

    /** The name of the American standard. */
    public static final String ASME = "ASME B40.100";

    /** The name of the European standard. */
    public static final String EN = "EN 837-1";

    private static final Source ASME_RECALLED = Source.fromMemory(ASME + " (B40.1)", "accuracy grades");

    private static final Source ASME_GRADE_A =
            Source.secondHand(ASME + " (B40.1)", "grade A", "an article on the accuracy grades");

    private static final Source ASME_GRADE_B = Source.secondHand(
            ASME + " (B40.1)", "grade B", "US Army correspondence course SM0486 and an article on the accuracy grades");

    private static final Source EN_TABLE = Source.published("EN 837-1:1996", "Table 11, maximum permissible errors");

    /** ASME B40.100 grade 4A. */
    public static final GaugeClass ASME_4A = GaugeClass.uniform(ASME, "grade 4A", 0.1, ASME_RECALLED);

    /** ASME B40.100 grade 3A. */
    public static final GaugeClass ASME_3A = GaugeClass.uniform(ASME, "grade 3A", 0.25, ASME_RECALLED);

    /** ASME B40.100 grade 2A. */
    public static final GaugeClass ASME_2A = GaugeClass.uniform(ASME, "grade 2A", 0.5, ASME_RECALLED);

    /** ASME B40.100 grade 1A. */
    public static final GaugeClass ASME_1A = GaugeClass.uniform(ASME, "grade 1A", 1, ASME_RECALLED);

    /** ASME B40.100 grade A. */
    public static final GaugeClass ASME_A = new GaugeClass(ASME, "grade A", 2, 1, 2, ASME_GRADE_A);

    /** ASME B40.100 grade B. */
    public static final GaugeClass ASME_B = new GaugeClass(ASME, "grade B", 3, 2, 3, ASME_GRADE_B);

    /** ASME B40.100 grade C. */
    public static final GaugeClass ASME_C = new GaugeClass(ASME, "grade C", 4, 3, 4, ASME_RECALLED);

    /** ASME B40.100 grade D. */
    public static final GaugeClass ASME_D = GaugeClass.uniform(ASME, "grade D", 5, ASME_RECALLED);

    /** EN 837-1 class 0.1. */
    public static final GaugeClass EN_0_1 = GaugeClass.uniform(EN, "class 0.1", 0.1, EN_TABLE);

    /** EN 837-1 class 0.25. */
    public static final GaugeClass EN_0_25 = GaugeClass.uniform(EN, "class 0.25", 0.25, EN_TABLE);

    /** EN 837-1 class 0.6. */
    public static final GaugeClass EN_0_6 = GaugeClass.uniform(EN, "class 0.6", 0.6, EN_TABLE);

    /** EN 837-1 class 1. */
    public static final GaugeClass EN_1 = GaugeClass.uniform(EN, "class 1", 1, EN_TABLE);

    /** EN 837-1 class 1.6. */
    public static final GaugeClass EN_1_6 = GaugeClass.uniform(EN, "class 1.6", 1.6, EN_TABLE);

    /** EN 837-1 class 2.5. */
    public static final GaugeClass EN_2_5 = GaugeClass.uniform(EN, "class 2.5", 2.5, EN_TABLE);

    /** EN 837-1 class 4. */
    public static final GaugeClass EN_4 = GaugeClass.uniform(EN, "class 4", 4, EN_TABLE);

    private static final List<GaugeClass> ALL = List.of(
            ASME_4A, ASME_3A, ASME_2A, ASME_1A, ASME_A, ASME_B, ASME_C, ASME_D, EN_0_1, EN_0_25, EN_0_6, EN_1, EN_1_6,
            EN_2_5, EN_4);

    private GaugeClasses() {}

    /**
     * All of them.
     *
     * @return the ASME grades and the EN classes, each finest first
     */
    public static List<GaugeClass> all() {
        return ALL;
    }
}
