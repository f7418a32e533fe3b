package org.ullage.selection;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.ullage.quantity.Digits;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * What was chosen beyond the requirement. Immutable.
 *
 * <p>It is counted in nominal volume where one is required, else in acceptance volume. Its cost is the price of the selection less what
 * the required volume alone would cost at the selection's own price by volume, that is price x oversize / total volume.
 *
 * @param volume total less required volume, zero or more
 * @param share oversize divided by required volume
 * @param cost what of the price falls to it, to cents
 */
public record Oversize(Volume volume, double share, BigDecimal cost) implements Serializable {

    private static final int CENT_DECIMALS = 2;
    private static final int PERCENT_DIGITS = 3;
    private static final int PERCENT = 100;

    /**
     * Checks the share.
     *
     * @param volume total less required volume
     * @param share oversize divided by required volume
     * @param cost what of the price falls to it
     * @throws OutOfRangeException if the share is negative or is no finite number of percent
     */
    public Oversize {
        if (!(share >= 0 && share * PERCENT <= Double.MAX_VALUE)) {
            throw new OutOfRangeException(
                    "oversize as a share of the required volume",
                    String.valueOf(share),
                    "zero or more and a finite number of percent",
                    "check the required volume and its unit");
        }
    }

    static Oversize of(Requirement requirement, Combination chosen) {
        Volume nominal = requirement.nominal();
        Volume acceptance = requirement.acceptance();
        if (nominal != null) {
            return of(nominal, chosen.nominal(), chosen.price());
        }
        return acceptance == null
                ? new Oversize(Volume.litres(0), 0, BigDecimal.ZERO)
                : of(acceptance, chosen.acceptance(), chosen.price());
    }

    private static Oversize of(Volume required, Volume total, BigDecimal price) {
        Volume beyond = Volume.ofSi(Math.max(0, total.si() - required.si()));
        BigDecimal cost = price.multiply(BigDecimal.valueOf(beyond.dividedBy(total)))
                .setScale(CENT_DECIMALS, RoundingMode.HALF_UP);
        return new Oversize(beyond, beyond.dividedBy(required), cost);
    }

    /**
     * The oversize for people.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return volume.text(system) + ", " + Digits.significant(share * PERCENT, PERCENT_DIGITS)
                + " % beyond the required volume; at the selection's own price by volume it costs "
                + cost.toPlainString();
    }
}
