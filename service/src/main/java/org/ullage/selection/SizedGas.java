package org.ullage.selection;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/**
 * What the gas of the vessels goes through: the same in each of them. Immutable.
 *
 * @param charge gas charge, absolute
 * @param cold pressure with the loop cold, absolute
 * @param last highest pressure allowed at the vessel, absolute
 * @param relief setting of the relief valve, absolute
 * @param water water to take in between cold and hot
 * @param atmosphere pressure of the air
 */
public record SizedGas(
        AbsolutePressure charge,
        AbsolutePressure cold,
        AbsolutePressure last,
        AbsolutePressure relief,
        Volume water,
        AbsolutePressure atmosphere)
        implements Serializable {

    /**
     * Checks the order of the pressures.
     *
     * @param charge gas charge
     * @param cold pressure cold
     * @param last highest pressure allowed
     * @param relief relief setting
     * @param water water to take in
     * @param atmosphere pressure of the air
     * @throws OutOfRangeException if the pressures are out of order or the water is not above zero
     */
    public SizedGas {
        GasLaw.requireOrder(charge, cold, last);
        if (GasLaw.isAbove(last.si(), relief.si())) {
            throw new OutOfRangeException(
                    "highest pressure allowed",
                    last.textInBothSystems(),
                    "at most the relief setting " + relief.textInBothSystems(),
                    "check both, and whether they are gauge or absolute");
        }
        if (water.si() <= 0) {
            throw new OutOfRangeException(
                    "water to take in", water.textInBothSystems(), "above zero", "check the sizing");
        }
    }

    /**
     * The gas of a sized loop.
     *
     * @param sizing the answer of a method
     * @return its charge and pressures
     * @throws MissingInputException if the relief setting was not given
     * @throws OutOfRangeException if the pressures are out of order, as for an open tank
     */
    public static SizedGas of(Sizing sizing) {
        AbsolutePressure air = sizing.atmosphere();
        @Nullable GaugePressure relief = sizing.job().pressures().reliefSetting();
        if (relief == null) {
            throw new MissingInputException("relief setting", "the margin below the valve", "give the valve's setting");
        }
        return new SizedGas(
                sizing.preCharge().absolute(air),
                sizing.coldPressure().absolute(air),
                sizing.finalPressure().absolute(air),
                relief.absolute(air),
                sizing.acceptanceVolume(),
                air);
    }
}
