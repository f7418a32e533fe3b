package org.ullage.charge;

import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * The published and practised rules for the range of a gauge. They do not agree: a boiler gauge whose scale ends at twice the boiler's
 * rating has the cold fill in its lowest quarter, see {@link GaugeConflict}.
 */
public final class GaugeRangeRules {

    private static final String ALLOWABLE = "maximum allowable working pressure";

    private static final Source MARYLAND = Source.published("COMAR (Maryland) 09.12.01.12", "B(2)");
    private static final Source ASME_IV = Source.fromMemory("ASME BPVC Section IV", "HG-611");
    private static final Source COLUMBIA = Source.published("DCMR (District of Columbia) 12-E", "rule 1016");
    private static final Source ERROR = Source.computed("accuracy class of a dial gauge", "error over reading");

    /** Boiler pressure or altitude gauge, Maryland: 45 to 90 psi for a 30 psi boiler. */
    public static final GaugeScaleRule BOILER_MARYLAND = new GaugeScaleRule(
            "boiler pressure or altitude gauge",
            ALLOWABLE,
            new Constant("k_least", 1.5, "1", MARYLAND),
            new Constant("k_most", 3, "1", MARYLAND));

    /** Boiler pressure or altitude gauge, ASME IV. */
    public static final GaugeScaleRule BOILER_ASME_IV = new GaugeScaleRule(
            "boiler pressure or altitude gauge",
            "relief setting",
            new Constant("k_least", 1.5, "1", ASME_IV),
            new Constant("k_most", 3.5, "1", ASME_IV));

    /** Gauge of a hydro-pneumatic tank, District of Columbia. */
    public static final GaugeScaleRule HYDRO_PNEUMATIC_COLUMBIA = new GaugeScaleRule(
            "gauge of a hydro-pneumatic tank", ALLOWABLE, new Constant("k_least", 1.5, "1", COLUMBIA), null);

    /** The reading belongs in the middle half of the dial. */
    public static final GaugeRangeRule MIDDLE_HALF = new GaugeRangeRule(
            "any dial gauge",
            "the usual reading stands in the middle half of the scale",
            Source.commonPractice("advice on the choice of gauges"));

    /** A charge has a gauge of its own. */
    public static final GaugeRangeRule CHARGE = new GaugeRangeRule(
            "charge gauge for vessels",
            "a low range, 0 to 30 psi or 0 to 4 bar, read with the water side at zero pressure; a tyre gauge of 0 to 100 psi is"
                    + " too coarse at 12 psi",
            Source.commonPractice("charge gauges for vessels"));

    private static final GaugeRangeRule SEALED_UK = new GaugeRangeRule(
            "gauge of a sealed domestic system (United Kingdom)",
            "covers at least 0 to 4 bar, with a set pointer",
            Source.published("boiler installation instructions (United Kingdom)", "sealed systems, pressure gauge"));

    private static final GaugeRangeRule IRC = new GaugeRangeRule(
            "boiler gauge, dwellings (United States)",
            "shows the normal range of temperature and pressure",
            Source.published("International Residential Code, 2018", "M2002.2"));

    private static final GaugeRangeRule SOLAR = new GaugeRangeRule(
            "gauges of a solar loop",
            "rated 125 psi, at the pumps, the exchanger ports and the tank",
            Source.published("UFC 3-440-01, Active solar preheat systems", "2002, gauges"));

    private static final GaugeRangeRule GRADUATION = new GaugeRangeRule(
            "gauge by ASME B40.100",
            "smallest graduation not above twice the error of the middle half",
            Source.published("ASME B40.100-2005", "graduation, excerpt"));

    private static final GaugeRangeRule ARITHMETIC = new GaugeRangeRule(
            "any dial gauge", "error = class in percent x span; percent of reading = error / reading", ERROR);

    private GaugeRangeRules() {}

    /**
     * The rules that say where a scale must end.
     *
     * @return the rules
     */
    public static List<GaugeScaleRule> scales() {
        return List.of(BOILER_MARYLAND, BOILER_ASME_IV, HYDRO_PNEUMATIC_COLUMBIA);
    }

    /**
     * The other rules.
     *
     * @return the rules in words
     */
    public static List<GaugeRangeRule> advice() {
        return List.of(MIDDLE_HALF, CHARGE, SEALED_UK, IRC, SOLAR, GRADUATION, ARITHMETIC);
    }
}
