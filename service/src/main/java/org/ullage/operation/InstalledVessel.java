package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.StaticHead;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasTemperatures;

/**
 * A vessel as it stands on a loop in use. Immutable.
 *
 * <p>Lost gas is given by what is left of it: a share f of the gas behaves as the charge f p_0 (absolute) in the same shell, for only
 * the amount of gas p_0 V_n counts.
 *
 * @param name what the site calls it, unique among its neighbours
 * @param nominal nominal volume V_n, above zero
 * @param charge gas charge p_0 with the water side empty
 * @param chargedAt gas temperature at which the charge was set or last read
 * @param gasTemperature gas temperature in use, the same throughout
 * @param gasLeft share of the charged gas that is still there; 0 % is a vessel full of water
 * @param acceptanceLimit water at which the membrane is at its stop, or null if only the gas limits it
 * @param above height above the point where the loop's pressure is read, negative if below
 */
public record InstalledVessel(
        String name,
        Volume nominal,
        GaugePressure charge,
        Temperature chargedAt,
        Temperature gasTemperature,
        VolumeFraction gasLeft,
        @Nullable Volume acceptanceLimit,
        Length above)
        implements Serializable {

    private static final VolumeFraction ALL = VolumeFraction.percent(100);

    /**
     * Checks name and volumes.
     *
     * @param name not blank
     * @param nominal above zero
     * @param charge gas charge
     * @param chargedAt gas temperature of the charge
     * @param gasTemperature gas temperature in use
     * @param gasLeft share of the gas that is left
     * @param acceptanceLimit above zero and not above the nominal volume, or null
     * @param above height above the reference point
     * @throws OutOfRangeException if the name is blank or a volume is out of range
     */
    public InstalledVessel {
        if (name.isBlank()) {
            throw new OutOfRangeException("name of a vessel", "blank", "given", "call it as the site calls it");
        }
        if (nominal.si() <= 0) {
            throw new OutOfRangeException(
                    "nominal volume of " + name,
                    nominal.textInBothSystems(),
                    "above zero",
                    "take it from the vessel's data plate");
        }
        if (acceptanceLimit != null && (acceptanceLimit.si() <= 0 || acceptanceLimit.si() > nominal.si())) {
            throw new OutOfRangeException(
                    "acceptance limit of " + name,
                    acceptanceLimit.textInBothSystems(),
                    "above zero and not above the nominal volume " + nominal.textInBothSystems(),
                    "take it from the vessel's data plate");
        }
    }

    /**
     * A sound vessel beside the point where the pressure is read: all its gas, at 20 degC when charged and in use, and no stop for its
     * membrane.
     *
     * @param name what the site calls it
     * @param nominal nominal volume
     * @param charge gas charge
     * @return the vessel
     * @throws OutOfRangeException if the name is blank or the volume not above zero
     */
    public static InstalledVessel of(String name, Volume nominal, GaugePressure charge) {
        Temperature room = GasTemperatures.ISOTHERMAL.charged();
        return new InstalledVessel(name, nominal, charge, room, room, ALL, null, Length.metres(0));
    }

    /**
     * The same vessel with its gas at other temperatures: p_0 grows with T_use / T_charged.
     *
     * @param charged when the charge was set
     * @param inUse in use
     * @return a copy
     */
    public InstalledVessel withGasAt(Temperature charged, Temperature inUse) {
        return new InstalledVessel(name, nominal, charge, charged, inUse, gasLeft, acceptanceLimit, above);
    }

    /**
     * The same vessel with the water at which its membrane is at its stop.
     *
     * @param limit above zero and not above the nominal volume
     * @return a copy
     * @throws OutOfRangeException if the limit is out of range
     */
    public InstalledVessel withAcceptanceLimit(Volume limit) {
        return new InstalledVessel(name, nominal, charge, chargedAt, gasTemperature, gasLeft, limit, above);
    }

    /**
     * The same vessel with another charge.
     *
     * @param other gas charge
     * @return a copy
     */
    public InstalledVessel withCharge(GaugePressure other) {
        return new InstalledVessel(name, nominal, other, chargedAt, gasTemperature, gasLeft, acceptanceLimit, above);
    }

    /**
     * The same vessel at a height.
     *
     * @param height above the point where the pressure is read, negative if below
     * @return a copy
     */
    public InstalledVessel standing(Length height) {
        return new InstalledVessel(name, nominal, charge, chargedAt, gasTemperature, gasLeft, acceptanceLimit, height);
    }

    /**
     * The same vessel after losing gas.
     *
     * @param share what is left of the gas it was charged with
     * @return a copy
     */
    public InstalledVessel withGasLeft(VolumeFraction share) {
        return new InstalledVessel(name, nominal, charge, chargedAt, gasTemperature, share, acceptanceLimit, above);
    }

    /**
     * The same vessel with a known volume of gas at a pressure: what is left of the gas follows.
     *
     * @param gas volume of the gas
     * @param at pressure at the vessel
     * @param air pressure of the surrounding air
     * @return a copy
     * @throws OutOfRangeException if the volume is negative or more gas than the charge
     */
    public InstalledVessel withGas(Volume gas, GaugePressure at, AbsolutePressure air) {
        double share = gas.si() * at.absolute(air).si() / (fullChargeSi(air) * nominal.si());
        if (share < 0 || share > 1) {
            throw new OutOfRangeException(
                    "gas in " + name,
                    gas.textInBothSystems(),
                    "from zero to what it was charged with, "
                            + Volume.ofSi(gas.si() / share).textInBothSystems() + " at this pressure",
                    "state the charge that it has now");
        }
        return withGasLeft(VolumeFraction.of(share, Units.VOLUME_FRACTION));
    }

    /** The vessel in numbers: its charge as if all shells had it, of the gas that is left. */
    GasGroup group(AbsolutePressure air) {
        double limitShare = acceptanceLimit == null ? 1 : acceptanceLimit.dividedBy(nominal);
        return new GasGroup(
                nominal.si(),
                fullChargeSi(air) * gasLeft.si(),
                limitShare,
                StaticHead.of(above).si());
    }

    private double fullChargeSi(AbsolutePressure air) {
        return charge.absolute(air).si() * (gasTemperature.si() / chargedAt.si());
    }
}
