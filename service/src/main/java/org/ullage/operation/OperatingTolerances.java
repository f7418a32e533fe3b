package org.ullage.operation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.VolumeFraction;

/**
 * How far what is behind a curve may be off, either way; zero for a value taken as exact. Immutable.
 *
 * @param contents of the contents, as a share of them, below 100 %
 * @param charge of every gas charge, all off the same way
 * @param fill of the fill pressure
 */
public record OperatingTolerances(VolumeFraction contents, PressureDifference charge, PressureDifference fill)
        implements Serializable {

    private static final List<Integer> SIGNS = List.of(-1, 1);

    /**
     * Checks the signs.
     *
     * @param contents of the contents
     * @param charge of every gas charge
     * @param fill of the fill pressure
     * @throws OutOfRangeException if one is negative or all of the contents is in doubt
     */
    public OperatingTolerances {
        if (contents.si() >= 1) {
            throw new OutOfRangeException(
                    "tolerance of the contents",
                    contents.text(UnitSystem.SI),
                    "below 100 vol%",
                    "estimate the contents");
        }
        requireNotNegative("tolerance of the charge", charge);
        requireNotNegative("tolerance of the fill pressure", fill);
    }

    private static void requireNotNegative(String name, PressureDifference tolerance) {
        if (tolerance.si() < 0) {
            throw new OutOfRangeException(
                    name, tolerance.text(UnitSystem.SI), "zero or more", "give it without a sign");
        }
    }

    /** The curve with each value at both ends of its tolerance, in every combination. */
    List<OperatingCurve> corners(OperatingCurve curve) {
        List<OperatingCurve> corners = new ArrayList<>();
        for (int more : SIGNS) {
            for (int gassed : SIGNS) {
                for (int filled : SIGNS) {
                    corners.add(corner(curve.inUse(), more, gassed, filled));
                }
            }
        }
        return corners;
    }

    private OperatingCurve corner(LoopInUse inUse, int more, int gassed, int filled) {
        VesselBank bank = inUse.bank();
        List<InstalledVessel> vessels = bank.vessels().stream()
                .map(vessel -> vessel.withCharge(vessel.charge().plus(charge.times(gassed))))
                .toList();
        LoopInUse other = inUse.with(
                        inUse.loop().holding(inUse.loop().contents().times(1 + more * contents.si())))
                .filledTo(raised(inUse.fill(), filled));
        Reading later = inUse.later();
        VesselBank charged = new VesselBank(vessels, bank.atmosphere());
        return later == null
                ? other.with(charged).curve()
                : other.leftAt(charged, raised(later, filled)).curve();
    }

    private Reading raised(Reading reading, int sign) {
        return new Reading(reading.pressure().plus(fill.times(sign)), reading.temperature());
    }
}
