package org.ullage.method;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * Water that a method keeps in the vessel beyond the expansion, to make up for losses: a share of the contents but not less than
 * an amount; for small vessels instead a share of the vessel. Immutable.
 *
 * @param shareOfContents share of the contents
 * @param least smallest reserve
 * @param smallVessel largest nominal volume that counts as small; zero if the method makes no difference
 * @param shareOfSmallVessel share of a small vessel's nominal volume
 * @param source where the rule comes from
 */
public record WaterReserve(
        VolumeFraction shareOfContents,
        Volume least,
        Volume smallVessel,
        VolumeFraction shareOfSmallVessel,
        Source source)
        implements Serializable {

    /** No reserve. */
    public static final WaterReserve NONE = ofContents(
            VolumeFraction.percent(0), Volume.litres(0), Source.commonPractice("no water reserve in the rule"));

    /**
     * A share of the contents with a least amount.
     *
     * @param share share of the contents
     * @param least smallest reserve
     * @param source where the rule comes from
     * @return the rule
     */
    public static WaterReserve ofContents(VolumeFraction share, Volume least, Source source) {
        return new WaterReserve(share, least, Volume.litres(0), VolumeFraction.percent(0), source);
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
        return new WaterReserve(shareOfContents, least, upTo, share, whole);
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
        double small = smallVesselVolume(expansion, volumePerWater);
        return small <= smallVessel.si()
                ? shareOfSmallVessel.si() * small
                : Math.max(shareOfContents.si() * contents, least.si());
    }

    /** Solves V = (expansion + share V) x volumePerWater for V; infinite when the share can never be reached. */
    private double smallVesselVolume(double expansion, double volumePerWater) {
        double rest = 1 - shareOfSmallVessel.si() * volumePerWater;
        return rest > 0 ? expansion * volumePerWater / rest : Double.POSITIVE_INFINITY;
    }

    Step step(Volume contents, Volume expansion, double volumePerWater, Volume reserve) {
        Term result = Term.of("V_wr", reserve);
        if (isNone()) {
            return Step.given("water reserve", result, "none in this method", source);
        }
        double small = smallVesselVolume(expansion.si(), volumePerWater);
        if (small <= smallVessel.si()) {
            return new Step(
                    "water reserve of a small vessel (up to " + smallVessel.text(UnitSystem.SI) + ")",
                    "r_v * V_e * k / (1 - r_v * k)",
                    List.of(
                            Term.of("r_v", shareOfSmallVessel),
                            Term.of("V_e", expansion),
                            Term.number("k", volumePerWater)),
                    result,
                    source);
        }
        return new Step(
                "water reserve",
                "max(r_s * V_s, V_least)",
                List.of(Term.of("r_s", shareOfContents), Term.of("V_s", contents), Term.of("V_least", least)),
                result,
                source);
    }

    boolean isNone() {
        return shareOfContents.si() == 0 && least.si() == 0 && smallVessel.si() == 0;
    }

    /**
     * The rule in words.
     *
     * @return such as {@code 0.5 vol% of the contents, at least 3 L}
     */
    @Override
    public String toString() {
        if (isNone()) {
            return "none";
        }
        String words = shareOfContents.text(UnitSystem.SI) + " of the contents, at least " + least.text(UnitSystem.SI);
        return smallVessel.si() == 0
                ? words
                : words + "; " + shareOfSmallVessel.text(UnitSystem.SI) + " of a vessel up to "
                        + smallVessel.text(UnitSystem.SI);
    }
}
