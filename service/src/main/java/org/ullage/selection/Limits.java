package org.ullage.selection;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * How many vessels there may be and what room, floor and stock allow. Immutable; null means no limit.
 *
 * @param vessels most vessels, 1 to 12
 * @param mixed whether vessels of different sizes may stand together
 * @param footprint floor area for all of them
 * @param height height of the tallest
 * @param load mass of all of them, waterlogged
 * @param fluid density of the loop's fluid, cold; needed for a load
 * @param countStock whether the stock of the catalogue is a limit
 */
public record Limits(
        int vessels,
        boolean mixed,
        @Nullable Area footprint,
        @Nullable Length height,
        @Nullable Mass load,
        @Nullable Density fluid,
        boolean countStock)
        implements Serializable {

    /** Vessels that still make a sensible battery; the caller may set another number. */
    private static final int USUAL_VESSELS = 6;

    /** Most vessels that can be asked for. */
    private static final int LARGEST_BATTERY = 12;

    /** Two to this power is more than the most vessels. */
    static final int MOST_VESSELS_BITS = bits(LARGEST_BATTERY);

    /** Up to six vessels, sizes mixed, stock counted, nothing else limited. */
    public static final Limits USUAL = new Limits(USUAL_VESSELS, true, null, null, null, null, true);

    /**
     * Checks the limits.
     *
     * @param vessels most vessels
     * @param mixed whether sizes may be mixed
     * @param footprint floor area, or null
     * @param height above zero, or null
     * @param load waterlogged mass, or null
     * @param fluid density of the fluid, or null
     * @param countStock whether stock is a limit
     * @throws OutOfRangeException if the number of vessels or the height is out of range
     * @throws MissingInputException if there is a load without the density of the fluid
     */
    public Limits {
        if (vessels < 1 || vessels > LARGEST_BATTERY) {
            throw new OutOfRangeException(
                    "number of vessels",
                    String.valueOf(vessels),
                    "from 1 to " + LARGEST_BATTERY,
                    "take larger vessels or divide the job");
        }
        if (height != null && height.si() <= 0) {
            throw new OutOfRangeException(
                    "height limit", height.textInBothSystems(), "above zero", "give the clear height of the room");
        }
        if (load != null && fluid == null) {
            throw new MissingInputException(
                    "density of the fluid", "a limit on the waterlogged mass", "give the density of the cold fluid");
        }
    }

    private static int bits(int number) {
        return Integer.SIZE - Integer.numberOfLeadingZeros(number);
    }

    Limits withMostVessels() {
        return withVessels(LARGEST_BATTERY);
    }

    Limits withVessels(int most) {
        return new Limits(most, mixed, footprint, height, load, fluid, countStock);
    }

    Limits withMixed(boolean sizes) {
        return new Limits(vessels, sizes, footprint, height, load, fluid, countStock);
    }

    Limits withFootprint(@Nullable Area most) {
        return new Limits(vessels, mixed, most, height, load, fluid, countStock);
    }

    Limits withHeight(@Nullable Length most) {
        return new Limits(vessels, mixed, footprint, most, load, fluid, countStock);
    }

    Limits withLoad(@Nullable Mass most, @Nullable Density density) {
        return new Limits(vessels, mixed, footprint, height, most, density, countStock);
    }

    Limits withoutStock() {
        return new Limits(vessels, mixed, footprint, height, load, fluid, false);
    }
}
