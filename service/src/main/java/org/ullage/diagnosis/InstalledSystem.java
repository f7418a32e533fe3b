package org.ullage.diagnosis;

import java.io.Serializable;
import org.ullage.loop.Loop;
import org.ullage.operation.FillPlan;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasTemperatures;

/**
 * What was installed, as its record says: what a sound vessel is held against. Several vessels of one charge count as one of their
 * nominal volumes together. Pressures are at the vessel's connection. Immutable.
 *
 * @param loop contents, fluid and pipe
 * @param contentsError how far the contents may be off, either way; zero if they were metered
 * @param nominal nominal volume of the vessel, above zero
 * @param charge the charge that was set, as it reads at {@link #CHARGED_AT}
 * @param lowestFill lowest fill pressure, see {@link FillPlan}
 * @param highestFill highest fill pressure
 * @param fill water temperature these two hold for
 * @param relief the relief valve, corrected to the level of the vessel
 * @param designCold lowest temperature the loop was designed for
 * @param designHot highest temperature it was designed for
 * @param atmosphere pressure of the air on site
 */
public record InstalledSystem(
        Loop loop,
        Volume contentsError,
        Volume nominal,
        GaugePressure charge,
        GaugePressure lowestFill,
        GaugePressure highestFill,
        Temperature fill,
        ReliefValve relief,
        Temperature designCold,
        Temperature designHot,
        AbsolutePressure atmosphere)
        implements Serializable {

    /** Gas temperature at which the charge counts: 20 degC, as in {@link GasTemperatures#ISOTHERMAL}. */
    public static final Temperature CHARGED_AT = GasTemperatures.ISOTHERMAL.charged();

    /**
     * Checks the order of the values.
     *
     * @param loop contents, fluid and pipe
     * @param contentsError how far the contents may be off
     * @param nominal nominal volume
     * @param charge the charge that was set
     * @param lowestFill lowest fill pressure
     * @param highestFill highest fill pressure
     * @param fill water temperature these two hold for
     * @param relief the relief valve
     * @param designCold lowest temperature
     * @param designHot highest temperature
     * @param atmosphere pressure of the air
     * @throws OutOfRangeException if a volume is negative, or pressures or temperatures are out of order
     */
    public InstalledSystem {
        require(nominal.si() > 0, "nominal volume", nominal.textInBothSystems(), "above zero");
        require(
                contentsError.si() >= 0 && contentsError.si() < loop.contents().si(),
                "error of the contents",
                contentsError.textInBothSystems(),
                "from zero to less than the contents");
        require(charge.si() + atmosphere.si() > 0, "gas charge", charge.textInBothSystems(), "above vacuum");
        require(
                charge.si() <= lowestFill.si(),
                "gas charge",
                charge.textInBothSystems(),
                "at or below the lowest fill pressure " + lowestFill.textInBothSystems());
        require(
                lowestFill.si() <= highestFill.si(),
                "lowest fill pressure",
                lowestFill.textInBothSystems(),
                "at or below the highest " + highestFill.textInBothSystems());
        require(
                highestFill.si() < relief.setting().si(),
                "highest fill pressure",
                highestFill.textInBothSystems(),
                "below the relief setting " + relief.setting().textInBothSystems());
        require(
                designCold.si() < designHot.si(),
                "lowest temperature",
                designCold.textInBothSystems(),
                "below the highest " + designHot.textInBothSystems());
    }

    private static void require(boolean holds, String quantity, String value, String allowed) {
        if (!holds) {
            throw new OutOfRangeException(quantity, value, allowed, "check it against the record of the installation");
        }
    }

    /** Gas as p V at {@link #CHARGED_AT}, in joules: absolute charge times nominal volume. */
    double gasSi() {
        return (charge.si() + atmosphere.si()) * nominal.si();
    }
}
