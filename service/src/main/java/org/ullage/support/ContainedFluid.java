package org.ullage.support;

import java.io.Serializable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * What fills a waterlogged vessel, as its weight sees it. Take it at the coldest the vessel gets, where it is heaviest. Immutable.
 *
 * @param name in words
 * @param density how heavy it is
 * @param source where the density comes from
 */
public record ContainedFluid(String name, Density density, Source source) implements Serializable {

    /** Water at 20 degC, 998.2 kg/m3. */
    public static final ContainedFluid WATER = water(
            Density.kilogramsPerCubicMetre(998.2), Source.computed("IAPWS-95", "density of water at 20 degC, 0.1 MPa"));

    private static ContainedFluid water(Density density, Source source) {
        return new ContainedFluid("water at 20 degC", density, source);
    }

    /**
     * A fluid by its model.
     *
     * @param fluid the fluid and its model
     * @param temperature the coldest the vessel gets
     * @param pressure absolute pressure there
     * @return the fluid with 1 / v as its density
     * @throws org.ullage.quantity.OutOfRangeException if the state is outside the model or is not liquid
     */
    public static ContainedFluid of(LoopFluid fluid, Temperature temperature, AbsolutePressure pressure) {
        String name = fluid.name() + " at " + temperature.text(UnitSystem.SI) + " by " + fluid.model();
        return new ContainedFluid(
                name, fluid.specificVolume(temperature, pressure).density(), fluid.source());
    }

    /**
     * A fluid by the caller's density.
     *
     * @param name in words
     * @param density its density when cold
     * @return the fluid
     */
    public static ContainedFluid of(String name, Density density) {
        return new ContainedFluid(name, density, Source.given());
    }
}
