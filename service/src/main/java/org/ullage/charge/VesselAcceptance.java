package org.ullage.charge;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;

/**
 * What a vessel takes in between cold and final pressure, whatever its charge: most with the charge at the cold pressure, less with a
 * lower charge, because it is part full when cold, and less with a higher one, because it takes nothing until its charge is passed.
 * Immutable.
 *
 * <pre>V = V_n [w(p_0 g_f / p_f) - w(p_0 g_i / p_i)],  w(x) = 1 - x, from 0 to the acceptance limit</pre>
 *
 * @param nominal V_n, above zero
 * @param cold p_i
 * @param last p_f, above the cold pressure
 * @param gas temperatures of the gas, which give g_i and g_f
 * @param limit largest share of the nominal volume that may be water, or null if not known or not limited
 */
public record VesselAcceptance(
        Volume nominal,
        AbsolutePressure cold,
        AbsolutePressure last,
        GasTemperatures gas,
        @Nullable VolumeFraction limit)
        implements Serializable {

    /**
     * Checks volume and pressures.
     *
     * @param nominal V_n
     * @param cold p_i
     * @param last p_f
     * @param gas temperatures of the gas
     * @param limit acceptance limit, or null
     * @throws OutOfRangeException if the nominal volume is not above zero or the final pressure not above the cold one
     */
    public VesselAcceptance {
        GasLaw.requireNominal(nominal);
        GasLaw.requireOrder(cold, cold, last);
    }

    /**
     * A vessel without an acceptance limit, its gas equally warm throughout.
     *
     * @param nominal nominal volume, above zero
     * @param cold cold pressure at the vessel
     * @param last final pressure at the vessel
     * @return the vessel between these pressures
     * @throws OutOfRangeException as the constructor
     */
    public static VesselAcceptance of(Volume nominal, AbsolutePressure cold, AbsolutePressure last) {
        return new VesselAcceptance(nominal, cold, last, GasTemperatures.ISOTHERMAL, null);
    }

    /**
     * A vessel between the pressures of a sizing.
     *
     * @param sizing the sizing of a closed vessel
     * @param nominal nominal volume of the vessel that was chosen
     * @return the vessel between these pressures
     * @throws OutOfRangeException as the constructor
     */
    public static VesselAcceptance of(Sizing sizing, Volume nominal) {
        AbsolutePressure air = sizing.atmosphere();
        return new VesselAcceptance(
                nominal,
                sizing.coldPressure().absolute(air),
                sizing.finalPressure().absolute(air),
                sizing.method().gasTemperatures(),
                sizing.job().vessel().acceptanceLimit());
    }

    /**
     * What the vessel takes in at a charge.
     *
     * @param charge p_0, at the gas temperature it is meant for
     * @return the volume, zero or more
     */
    public Volume at(AbsolutePressure charge) {
        double cold = share(charge.si() * gas.coldRatio(), this.cold.si());
        double hot = share(charge.si() * gas.hotRatio(), last.si());
        return nominal.times(Math.max(0, hot - cold));
    }

    private double share(double charge, double pressure) {
        double water = GasLaw.waterShare(charge, pressure);
        return limit == null ? water : Math.min(water, limit.si());
    }

    /**
     * What another charge is worth.
     *
     * @param wanted the charge that is wanted
     * @param other the charge that is there instead
     * @return acceptance at the other charge less that at the wanted one, negative for a loss
     */
    public Volume change(AbsolutePressure wanted, AbsolutePressure other) {
        return at(other).minus(at(wanted));
    }
}
