package org.ullage.fluids;

import java.util.Locale;
import java.util.Optional;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * The density models for propylene and ethylene glycol in water. They disagree: from 4.4 to 93.3 degC 40 vol% of ethylene
 * glycol expands by 4.77, 5.35, 4.79 or 4.74 % (in the order below, printed misprint apart), 40 vol% of propylene glycol by
 * 5.81, 6.00, 6.41 or 5.16 %, water by 3.83 %. {@link Glycol#of(org.ullage.quantity.VolumeFraction)} says which one is taken
 * where none is named, and why.
 */
public enum GlycolModel {
    /**
     * ASHRAE Handbook table for industrially inhibited glycol, by volume: 10 to 60 vol%, from the table's lowest filled row
     * (-35 to 0 degC by concentration) to 125 degC. Cells that the source misprints are corrected; see
     * {@link Glycol#tableCorrections()}.
     */
    ASHRAE(
            "ashrae",
            "ASHRAE Handbook table",
            GlycolSources.ASHRAE_DENSITY,
            "inhibited fluid, by volume; printed to 0.01 kg/m3, above 100 degC to four digits; up to 1.1 % denser than pure"
                    + " glycol"),

    /** The same with every cell as found, misprints included; to see what the corrections are worth. */
    ASHRAE_AS_PRINTED(
            "ashrae-as-printed",
            "ASHRAE Handbook table as printed",
            GlycolSources.ASHRAE_DENSITY,
            "as ashrae, with the suspected misprint 1009.62 kg/m3 (ethylene, 10 vol%, 30 degC) left in"),

    /** Melinder 2010 polynomials for pure glycol, by mass: 0 to 60 mass%, from the freezing point to 100 degC. */
    MELINDER(
            "melinder",
            "Melinder 2010",
            GlycolSources.MELINDER,
            "pure glycol, by mass; misses pure water by up to -0.09 % at 0 %, and expands less than ideal mixing below about"
                    + " 10 vol%"),

    /**
     * M. Conde 2011, by mass: 0 to 60 mass%, from the freezing point (Melinder 2010, not below -48 degC) to 100 degC. Absolute
     * densities lie 0.3 to 1.7 % above measured ones of ethylene glycol.
     */
    CONDE(
            "conde",
            "Conde 2011",
            GlycolSources.CONDE,
            "by mass; at 20 degC 0.3 to 1.7 % denser than the CRC Handbook values for ethylene glycol"),

    /**
     * Volumes of the unmixed components added: IAPWS-IF97 water and DIPPR-105 glycol. 0 to 100 mass%, 0 to 125 degC. Real
     * mixtures contract on mixing and the contraction shrinks on heating, so the true expansion lies somewhat above: a lower
     * bound. The only model here that depends on pressure, and the only one that meets pure water.
     */
    IDEAL_MIXING(
            "ideal",
            "ideal mixing",
            GlycolSources.IDEAL_MIXING,
            "a lower bound of the expansion: real mixtures contract on mixing, less so when hot");

    private final String id;
    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is a record of strings and so immutable
    private final Source source;

    private final String remark;

    GlycolModel(String id, String title, Source source, String remark) {
        this.id = id;
        this.title = title;
        this.source = source;
        this.remark = remark;
    }

    /**
     * The word that names it after the slash in {@link Fluids#parse(String)}.
     *
     * @return such as {@code melinder}
     */
    public String id() {
        return id;
    }

    /**
     * The model's name for people.
     *
     * @return such as {@code Melinder 2010}
     */
    public String title() {
        return title;
    }

    /**
     * Where the densities come from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * What has to be known when it is compared with another.
     *
     * @return a phrase
     */
    public String remark() {
        return remark;
    }

    /**
     * How far the density may be off, where the source states it.
     *
     * @return percent of the density; empty for the sources that state none or were not seen to
     */
    public Optional<Constant> statedUncertainty() {
        return this == IDEAL_MIXING
                ? Optional.of(new Constant(
                        "accuracy of the pure glycol's density near 20 degC", 1, "%", GlycolSources.DIPPR_ACCURACY))
                : Optional.empty();
    }

    /**
     * Whether its own concentration axis is by volume.
     *
     * @return true for the ASHRAE tables, false for those by mass
     */
    public boolean isByVolume() {
        return this == ASHRAE || this == ASHRAE_AS_PRINTED;
    }

    /** Whether it is one of those that end at 125 degC, the others at 100 degC. */
    boolean reachesFurtherUp() {
        return isByVolume() || this == IDEAL_MIXING;
    }

    static Optional<GlycolModel> withId(String text) {
        String wanted = text.toLowerCase(Locale.ROOT);
        for (GlycolModel model : values()) {
            if (model.id.equals(wanted)) {
                return Optional.of(model);
            }
        }
        return Optional.empty();
    }
}
