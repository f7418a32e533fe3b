package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.workings.Caution;

/**
 * Vapour pressure and boiling point of a glycol mixture by Raoult's law: an estimate, not a published value.
 *
 * <p>p = x p_water + (1 - x) p_glycol with x the mole fraction of water, 0 to 180 degC. For ethylene glycol measurements
 * (Fujita and Kikuchi 1989, 20 to 50 mass%, -10 to 60 degC) lie 0 to 5 % below it; for propylene glycol nothing stands against
 * it, take 5 %. For an anti-flash margin use pure water, as {@link GlycolSolution#vapourPressure(Temperature)} does: glycol
 * lowers the vapour pressure by 8 to 25 % in the usual range, and an estimate that is too low lets the loop boil. Immutable.
 */
public final class RaoultEstimate implements Serializable {

    private static final long serialVersionUID = 1L;

    /** Lowest temperature, 0 degC, K. */
    private static final double LOWEST = Celsius.ZERO;

    /** Highest temperature, 180 degC, K. */
    private static final double HIGHEST =
            Celsius.ZERO + new Constant("t_max", 180, "degC", GlycolSources.RAOULT).value();

    /** Molar mass of water, kg/kmol; the glycols' stand in their resource. */
    private static final double WATER_MOLAR_MASS =
            new Constant("M_w", 18.015, "kg/kmol", GlycolSources.MOLAR_MASS).value();

    private final Glycol glycol;
    private final PureGlycol pure;
    private final double waterMoleFraction;

    RaoultEstimate(Glycol glycol, MassFraction mass) {
        this.glycol = glycol;
        this.pure = GlycolData.of(glycol).pure();
        double waterMoles = (1 - mass.si()) / WATER_MOLAR_MASS;
        double glycolMoles = mass.si() / pure.molarMass();
        this.waterMoleFraction = waterMoles / (waterMoles + glycolMoles);
    }

    /**
     * Part of the molecules that are water.
     *
     * @return from 0 to 1
     */
    public double waterMoleFraction() {
        return waterMoleFraction;
    }

    /**
     * The estimated vapour pressure.
     *
     * @param temperature 0 to 180 degC
     * @return absolute pressure
     * @throws OutOfRangeException if the temperature is outside that range
     */
    public AbsolutePressure vapourPressure(Temperature temperature) {
        double kelvins = temperature.si();
        if (!Celsius.isWithin(kelvins, LOWEST, HIGHEST)) {
            throw new OutOfRangeException(
                    "temperature for the vapour pressure of " + glycol.text(),
                    Celsius.text(kelvins),
                    Celsius.text(LOWEST) + " to " + Celsius.text(HIGHEST) + " for the estimate by Raoult's law",
                    "use the vapour pressure of pure water, which is on the safe side");
        }
        return AbsolutePressure.ofSi(pascals(kelvins));
    }

    /**
     * The estimated boiling point.
     *
     * @param pressure absolute pressure at which it boils between 0 and 180 degC
     * @return the temperature at which the estimated vapour pressure is the pressure
     * @throws OutOfRangeException if it boils outside that range
     */
    public Temperature boilingPoint(AbsolutePressure pressure) {
        double wanted = pressure.si();
        double least = pascals(LOWEST);
        double most = pascals(HIGHEST);
        if (!(wanted >= least && wanted <= most)) {
            throw new OutOfRangeException(
                    "pressure for the boiling point of " + glycol.text(),
                    pressure.text(Units.KILOPASCAL),
                    AbsolutePressure.ofSi(least).text(Units.KILOPASCAL) + " to "
                            + AbsolutePressure.ofSi(most).text(Units.KILOPASCAL)
                            + " for the estimate by Raoult's law",
                    "give the absolute pressure at the point whose boiling is meant");
        }
        return Temperature.ofSi(root(wanted));
    }

    /**
     * How the estimate is made.
     *
     * @return the source, marked as computed
     */
    public Source source() {
        return GlycolSources.RAOULT;
    }

    /**
     * What the reader of the estimate must know.
     *
     * @return that it is an estimate and what is safe instead
     */
    public Caution caution() {
        return new Caution(
                "The vapour pressure of the " + glycol.text()
                        + " mixture is an estimate; pure water's, which is higher, is the safe one against boiling.",
                source());
    }

    private double pascals(double kelvins) {
        return waterMoleFraction * WaterVapour.pressure(kelvins)
                + (1 - waterMoleFraction) * pure.vapourPressure(kelvins);
    }

    private double root(double wanted) {
        return Root.of(kelvins -> pascals(kelvins) - wanted, LOWEST, HIGHEST);
    }
}
