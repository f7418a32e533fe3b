package org.ullage.method;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Digits;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * Water that a method lets the vessel take beyond the expansion, to make up for losses and for what is not known: a share of the
 * contents but not less than an amount, or a share of the expansion, or both; for small vessels instead a share of the vessel.
 * Immutable.
 *
 * @param shareOfContents share of the contents
 * @param least smallest reserve
 * @param shareOfExpansion share of the net expansion on top, such as 0.25 for a factor of 1.25
 * @param smallVessel exception for small vessels, or null if the method makes no difference
 * @param source where the rule comes from
 */
public record WaterReserve(
        VolumeFraction shareOfContents,
        Volume least,
        double shareOfExpansion,
        @Nullable SmallVessel smallVessel,
        Source source)
        implements Serializable {

    private static final int SHARE_DIGITS = 4;
    private static final VolumeFraction NOTHING = VolumeFraction.percent(0);
    private static final Volume EMPTY = Volume.litres(0);

    /** No reserve. */
    public static final WaterReserve NONE =
            new WaterReserve(NOTHING, EMPTY, 0, null, Source.commonPractice("no water reserve in the rule"));

    /**
     * The exception for small vessels.
     *
     * @param upTo largest nominal volume that counts as small
     * @param share share of the small vessel's nominal volume
     */
    public record SmallVessel(Volume upTo, VolumeFraction share) implements Serializable {

        /** Solves V = (expansion + share V) x volumePerWater for V; infinite when the share can never be reached. */
        private double volume(double expansion, double volumePerWater) {
            double rest = 1 - share.si() * volumePerWater;
            return rest > 0 ? expansion * volumePerWater / rest : Double.POSITIVE_INFINITY;
        }

        private boolean applies(double expansion, double volumePerWater) {
            return volume(expansion, volumePerWater) <= upTo.si();
        }
    }

    /**
     * Checks the share of the expansion.
     *
     * @param shareOfContents share of the contents
     * @param least smallest reserve
     * @param shareOfExpansion share of the net expansion
     * @param smallVessel exception for small vessels, or null
     * @param source where the rule comes from
     * @throws OutOfRangeException if the share of the expansion is negative or not a number
     */
    public WaterReserve {
        if (!(shareOfExpansion >= 0 && Double.isFinite(shareOfExpansion))) {
            throw new OutOfRangeException(
                    "reserve as a share of the expansion",
                    String.valueOf(shareOfExpansion),
                    "zero or more and finite",
                    "write 0.25 for a factor of 1.25");
        }
    }

    /**
     * A share of the contents with a least amount.
     *
     * @param share share of the contents
     * @param least smallest reserve
     * @param source where the rule comes from
     * @return the rule
     */
    public static WaterReserve ofContents(VolumeFraction share, Volume least, Source source) {
        return new WaterReserve(share, least, 0, null, source);
    }

    /**
     * A share of the net expansion: a factor of 1.25 on the vessel is a share of 0.25.
     *
     * @param share zero or more
     * @param source where the rule comes from
     * @return the rule
     * @throws OutOfRangeException if the share is negative or not a number
     */
    public static WaterReserve ofExpansion(double share, Source source) {
        return new WaterReserve(NOTHING, EMPTY, share, null, source);
    }

    /**
     * The same rule with an exception for small vessels.
     *
     * @param upTo largest nominal volume that counts as small
     * @param share share of the small vessel's nominal volume
     * @param whole where the rule with its exception comes from
     * @return a new rule
     */
    public WaterReserve orOfSmallVessel(Volume upTo, VolumeFraction share, Source whole) {
        return new WaterReserve(shareOfContents, least, shareOfExpansion, new SmallVessel(upTo, share), whole);
    }

    /**
     * The reserve on bare SI numbers.
     *
     * @param contents of the loop, in m3
     * @param expansion net expansion, in m3
     * @param volumePerWater nominal volume per volume of water taken in
     * @return the reserve in m3
     */
    double cubicMetres(double contents, double expansion, double volumePerWater) {
        if (smallVessel != null && smallVessel.applies(expansion, volumePerWater)) {
            return smallVessel.share().si() * smallVessel.volume(expansion, volumePerWater);
        }
        return Math.max(shareOfContents.si() * contents, least.si()) + shareOfExpansion * expansion;
    }

    Step step(Volume contents, Volume expansion, double volumePerWater, Volume reserve) {
        Term result = Term.of("V_wr", reserve);
        if (isNone()) {
            return Step.given("water reserve", result, "none in this method", source);
        }
        if (smallVessel != null && smallVessel.applies(expansion.si(), volumePerWater)) {
            return new Step(
                    "water reserve of a small vessel (up to "
                            + smallVessel.upTo().text(UnitSystem.SI) + ")",
                    "r_v * V_e * k / (1 - r_v * k)",
                    List.of(
                            Term.number("r_v", smallVessel.share().si()),
                            Term.of("V_e", expansion),
                            Term.number("k", volumePerWater)),
                    result,
                    source);
        }
        return new Step(
                "water reserve",
                shareOfExpansion == 0 ? "max(r_s * V_s, V_least)" : "max(r_s * V_s, V_least) + r_e * V_e",
                List.of(
                        Term.number("r_s", shareOfContents.si()),
                        Term.of("V_s", contents),
                        Term.of("V_least", least),
                        Term.number("r_e", shareOfExpansion),
                        Term.of("V_e", expansion)),
                result,
                source);
    }

    private boolean isNone() {
        return shareOfContents.si() == 0 && least.si() == 0 && shareOfExpansion == 0 && smallVessel == null;
    }

    /**
     * The rule in words.
     *
     * @return such as {@code 0.5 vol% of the contents, at least 3 L}
     */
    @Override
    public String toString() {
        List<String> parts = new ArrayList<>();
        if (shareOfContents.si() != 0 || least.si() != 0) {
            String words = shareOfContents.text(UnitSystem.SI) + " of the contents";
            parts.add(least.si() == 0 ? words : words + ", at least " + least.text(UnitSystem.SI));
        }
        if (shareOfExpansion != 0) {
            parts.add(Digits.significant(shareOfExpansion, SHARE_DIGITS) + " x the net expansion");
        }
        if (smallVessel != null) {
            parts.add(smallVessel.share().text(UnitSystem.SI) + " of a vessel up to "
                    + smallVessel.upTo().text(UnitSystem.SI));
        }
        return parts.isEmpty() ? "none" : String.join("; ", parts);
    }
}
