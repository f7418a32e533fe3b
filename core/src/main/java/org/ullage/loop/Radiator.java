package org.ullage.loop;

import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Temperature;

/**
 * Kinds of radiators and convectors whose water is known per square foot of equivalent direct radiation (EDR). The rating of a
 * section comes from {@link RadiatorSection}, the rating for an output from {@link RadiatorEmission}.
 */
public enum Radiator {
    /** Column-type cast iron radiator. */
    COLUMN_RADIATOR,
    /** Large-tube cast iron radiator. */
    LARGE_TUBE_RADIATOR,
    /** Slender-tube cast iron radiator. */
    SLENDER_TUBE_RADIATOR,
    /** Cast iron radiant panel or cast iron baseboard. */
    CAST_IRON_PANEL,
    /** Cast iron convector. */
    CAST_IRON_CONVECTOR,
    /** Non-ferrous (copper) convector. */
    COPPER_CONVECTOR;

    /**
     * The contents of radiators by their rating.
     *
     * @param squareFeetEdr square feet EDR, above zero
     * @return a line for a list
     * @throws OutOfRangeException if the rating is not above zero
     */
    public ContentsItem item(double squareFeetEdr) {
        return ContentsRule.of(this).item(Amount.ofRadiation(squareFeetEdr), squareFeetEdr);
    }

    /**
     * The contents of radiators by the output they give at a water temperature.
     *
     * @param output heat output, above zero
     * @param averageWater average of flow and return
     * @return a line for a list
     * @throws OutOfRangeException if the output is zero or negative, or the temperature outside the table
     */
    public ContentsItem item(Power output, Temperature averageWater) {
        ContentsItem byRating = item(RadiatorEmission.squareFeetEdr(output, averageWater));
        return ContentsItem.of(
                byRating.name(), Amount.of(output), byRating.volume(), source(), RadiatorEmission.source(averageWater));
    }

    /**
     * Where the contents per square foot EDR come from.
     *
     * @return the source
     */
    public Source source() {
        return ContentsRule.of(this).source();
    }
}
