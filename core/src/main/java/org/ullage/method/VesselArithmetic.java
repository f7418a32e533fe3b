package org.ullage.method;

import java.io.Serializable;
import org.ullage.provenance.Constant;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;

/** The nominal volume of a closed vessel for each unit of water it takes in, as functions of absolute SI pressures, without checks. */
final class VesselArithmetic implements Serializable {

    private static final long serialVersionUID = 1L;

    private final GasTemperatures gas;
    private final double leastPerWater;
    private final double limit;

    VesselArithmetic(Method method, SizingJob job) {
        Constant least = method.leastVolumePerWater();
        VolumeFraction acceptance = job.vessel().acceptanceLimit();
        this.gas = method.gasTemperatures();
        this.leastPerWater = least == null ? 0 : least.value();
        this.limit = acceptance == null ? Double.POSITIVE_INFINITY : acceptance.si();
    }

    /** The charge as it stands in the vessel when the loop is cold. */
    double chargeCold(double charge) {
        return charge * gas.coldRatio();
    }

    /** By the gas law alone; not above zero or infinite where the gas leaves no room for water. */
    double byGasLaw(double charge, double cold, double last) {
        return GasLaw.volumePerWater(charge, cold, last, gas);
    }

    /** What the rule allows at least, zero if it says nothing. */
    double least() {
        return leastPerWater;
    }

    /** Share of the vessel that the limit leaves for water when the loop is cold; infinite without a limit. */
    double freeShare(double charge, double cold) {
        return limit == Double.POSITIVE_INFINITY ? limit : limit - GasLaw.waterShare(chargeCold(charge), cold);
    }
}
