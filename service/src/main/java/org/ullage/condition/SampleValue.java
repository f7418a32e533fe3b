package org.ullage.condition;

import java.io.Serializable;
import org.ullage.quantity.Digits;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/**
 * One measured value. Immutable.
 *
 * @param quantity what was measured
 * @param number the number in the quantity's unit
 */
public record SampleValue(SampleQuantity quantity, double number) implements Serializable {

    private static final int DIGITS = 4;

    /**
     * Checks the number.
     *
     * @param quantity what was measured
     * @param number the number in the quantity's unit
     * @throws OutOfRangeException if no instrument shows such a number
     */
    public SampleValue {
        if (!(number >= quantity.least() && number <= quantity.most())) {
            throw new OutOfRangeException(
                    quantity.word(),
                    quantity.withUnit(Double.toString(number)),
                    "from " + text(quantity, quantity.least()) + " to " + text(quantity, quantity.most()),
                    "check the reading and its unit");
        }
    }

    /**
     * A pH.
     *
     * @param number from 0 to 14, at 25 degC
     * @return the value
     * @throws OutOfRangeException if it is outside
     */
    public static SampleValue ph(double number) {
        return new SampleValue(SampleQuantity.PH, number);
    }

    /**
     * A conductivity.
     *
     * @param microsiemensPerCentimetre at 25 degC
     * @return the value
     * @throws OutOfRangeException if it is negative or absurdly high
     */
    public static SampleValue conductivity(double microsiemensPerCentimetre) {
        return new SampleValue(SampleQuantity.CONDUCTIVITY, microsiemensPerCentimetre);
    }

    /**
     * A reserve alkalinity.
     *
     * @param millilitres 0.1 N hydrochloric acid for 10 mL of sample, to pH 5.5
     * @return the value
     * @throws OutOfRangeException if it is negative or absurdly high
     */
    public static SampleValue reserveAlkalinity(double millilitres) {
        return new SampleValue(SampleQuantity.RESERVE_ALKALINITY, millilitres);
    }

    /**
     * Dissolved oxygen.
     *
     * @param milligramsPerLitre the content
     * @return the value
     * @throws OutOfRangeException if it is negative or absurdly high
     */
    public static SampleValue oxygen(double milligramsPerLitre) {
        return new SampleValue(SampleQuantity.OXYGEN, milligramsPerLitre);
    }

    /**
     * Glycol as measured in the loop, after mixing.
     *
     * @param concentration by volume
     * @return the value
     */
    public static SampleValue glycol(VolumeFraction concentration) {
        return new SampleValue(SampleQuantity.GLYCOL, concentration.in(Units.VOLUME_PERCENT));
    }

    /**
     * The value for people.
     *
     * @return such as {@code pH 7.9} or {@code conductivity 420 uS/cm}
     */
    public String text() {
        return quantity.word() + " " + text(quantity, number);
    }

    static String text(SampleQuantity quantity, double number) {
        return quantity.withUnit(Digits.significant(number, DIGITS));
    }
}
