package org.ullage.record;

import java.io.Serializable;
import java.util.List;
import org.ullage.condition.SampleQuantity;
import org.ullage.quantity.Digits;

/** What the history of a fluid says of one measured quantity: a rate with its confidence interval, or that it is too short. */
public sealed interface FluidChange extends Serializable {

    /**
     * The answer for people.
     *
     * @return one line
     */
    String text();

    /**
     * A rate. Immutable.
     *
     * @param quantity what was measured; the numbers are in its unit
     * @param perYear change a year, negative if it falls
     * @param least lower end of the 95 % confidence interval
     * @param greatest upper end
     * @param degreesOfFreedom how many samples there are beyond those the fit uses up
     * @param outliers samples that lie too far from the line for chance
     */
    record Estimated(
            SampleQuantity quantity,
            double perYear,
            double least,
            double greatest,
            int degreesOfFreedom,
            List<SamplePoint> outliers)
            implements FluidChange {

        private static final int DIGITS = 3;

        /**
         * Copies the outliers.
         *
         * @param quantity what was measured
         * @param perYear change a year
         * @param least lower end
         * @param greatest upper end
         * @param degreesOfFreedom samples beyond those the fit uses up
         * @param outliers samples far from the line
         */
        public Estimated {
            outliers = List.copyOf(outliers);
        }

        @Override
        public String text() {
            return quantity.word() + " changes by " + number(perYear) + " a year (95 % confidence: " + number(least)
                    + " to " + number(greatest) + ")"
                    + (least <= 0 && greatest >= 0 ? "; no change is within the scatter" : "");
        }

        private String number(double number) {
            String unit = quantity.unit().isEmpty() ? "" : " " + quantity.unit();
            return (number < 0 ? "" : "+") + Digits.significant(number, DIGITS) + unit;
        }
    }

    /**
     * Not enough to tell. Immutable.
     *
     * @param quantity what was measured
     * @param intervals intervals between two samples without a treatment between them
     */
    record TooFew(SampleQuantity quantity, int intervals) implements FluidChange {

        @Override
        public String text() {
            return "too few samples for a rate of " + quantity.word() + ": " + intervals
                    + " interval(s) between samples on different days, at least 2 needed";
        }
    }
}
