package org.ullage.published;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * Open tanks by radiation, as American textbooks of about 1910 have it: gallons = square feet / 40. Historic; it knows neither contents
 * nor temperatures, and gives less than the later table for closed gravity tanks ({@link GravityTankTable}).
 */
public final class OpenTankByRadiation {

    /** Where the rule comes from. */
    public static final Source SOURCE = Source.published(
            "Cyclopedia of Architecture, Carpentry and Building (about 1907 to 1912)", "Expansion Tank");

    private static final Constant AREA_PER_GALLON = new Constant("A_gal", 40, "ft2/gal", SOURCE);

    private OpenTankByRadiation() {}

    /**
     * The volume of the tank.
     *
     * @param squareFeet radiating surface in square feet, above zero
     * @return the volume
     * @throws OutOfRangeException if the surface is not above zero and finite
     */
    public static Volume tankFor(double squareFeet) {
        requireRadiation(squareFeet);
        return Volume.gallons(squareFeet / AREA_PER_GALLON.value());
    }

    static void requireRadiation(double squareFeet) {
        if (!(squareFeet > 0 && Double.isFinite(squareFeet))) {
            throw new OutOfRangeException(
                    "radiation", squareFeet + " ft2", "above zero and finite", "give the surface in square feet");
        }
    }
}
