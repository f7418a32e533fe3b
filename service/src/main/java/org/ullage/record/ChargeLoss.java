package org.ullage.record;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;

/** What the history of a vessel says of its loss of gas: a rate with its confidence interval, or that it is too short. */
public sealed interface ChargeLoss extends Serializable {

    /**
     * The answer for people.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    String text(UnitSystem system);

    /**
     * A rate. Immutable.
     *
     * @param perYear loss of pressure a year at 20 degC; negative if the charge rose
     * @param least lower end of the 95 % confidence interval
     * @param greatest upper end
     * @param degreesOfFreedom how many readings there are beyond those the fit uses up
     * @param outliers readings that lie too far from the line for chance: look for the cause, they are not left out
     */
    record Estimated(
            PressureDifference perYear,
            PressureDifference least,
            PressureDifference greatest,
            int degreesOfFreedom,
            List<ChargePoint> outliers)
            implements ChargeLoss {

        /** Digits of a rate that has two or three good ones. */
        private static final int DIGITS = 3;

        /**
         * Copies the outliers.
         *
         * @param perYear loss a year
         * @param least lower end
         * @param greatest upper end
         * @param degreesOfFreedom readings beyond those the fit uses up
         * @param outliers readings far from the line
         */
        public Estimated {
            outliers = List.copyOf(outliers);
        }

        @Override
        public String text(UnitSystem system) {
            String band =
                    " (95 % confidence: " + least.text(system, DIGITS) + " to " + greatest.text(system, DIGITS) + ")";
            return "loss a year " + perYear.text(system, DIGITS) + band
                    + (least.si() > 0 ? "" : "; no loss is within the scatter");
        }
    }

    /**
     * Not enough to tell. Immutable.
     *
     * @param intervals intervals between two readings without a setting between them
     */
    record TooFew(int intervals) implements ChargeLoss {

        @Override
        public String text(UnitSystem system) {
            return "too few readings for a rate: " + intervals
                    + " interval(s) between readings on different days, at least 2 needed";
        }
    }
}
