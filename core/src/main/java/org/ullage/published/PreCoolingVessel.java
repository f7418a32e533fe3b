package org.ullage.published;

import java.util.List;
import org.ullage.loop.Loop;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/**
 * The pre-cooling (intermediate) vessel that keeps a membrane at or below 70 degC: V = dn/100 x V_A x (0.5 to 1.0), dn the expansion in
 * percent beyond the temperature the membrane stands. It is a plain vessel full of the loop's fluid, between loop and expansion vessel.
 *
 * <p>The source prints dn without saying between which temperatures; here it is from 70 degC to the highest temperature.
 */
public final class PreCoolingVessel {

    /** Where the rule comes from. */
    public static final Source SOURCE =
            Source.published("German trade encyclopaedia, pre-cooling vessel", "heating, solar");

    private static final Constant MEMBRANE = new Constant("t_m", 70, "degC", SOURCE);

    /** Highest continuous temperature at an ordinary membrane. */
    public static final Temperature MEMBRANE_LIMIT = Temperature.celsius(MEMBRANE.value());

    private static final Constant HALF = new Constant("f_50", 0.5, "1", SOURCE);
    private static final Constant BEHIND = new Constant("f_v", 0.5, "1", SOURCE);

    /** How to install it. */
    public static final List<Caution> CAUTIONS = List.of(
            new Caution(
                    "Connect a pre-cooling vessel of a heating or solar loop from above, of a cooling loop from below.",
                    SOURCE),
            new Caution("Never insulate a pre-cooling vessel: it works by losing heat.", SOURCE),
            new Caution("Special solar vessels stand 110 degC; for cooling keep the membrane above 0 degC.", SOURCE));

    private PreCoolingVessel() {}

    /**
     * For a heating loop of which about half the contents can be hotter than 70 degC.
     *
     * @param loop contents and fluid
     * @param hot highest temperature
     * @param pressure absolute pressure at it
     * @return the volume, zero if the loop is no hotter than 70 degC
     */
    public static Volume forHalfOf(Loop loop, Temperature hot, AbsolutePressure pressure) {
        return forAllOf(loop, hot, pressure).times(HALF.value());
    }

    /**
     * For a heating loop with storage, whose whole contents can be hotter than 70 degC.
     *
     * @param loop contents and fluid
     * @param hot highest temperature
     * @param pressure absolute pressure at it
     * @return the volume, zero if the loop is no hotter than 70 degC
     */
    public static Volume forAllOf(Loop loop, Temperature hot, AbsolutePressure pressure) {
        if (hot.compareTo(MEMBRANE_LIMIT) <= 0) {
            return Volume.litres(0);
        }
        double warm = loop.fluid().specificVolumeSi(MEMBRANE_LIMIT.si(), pressure.si());
        double hottest = loop.fluid().specificVolumeSi(hot.si(), pressure.si());
        return loop.contents().times(hottest / warm - 1);
    }

    /**
     * By the vessel behind it: about half of the water that vessel takes.
     *
     * @param useful useful (acceptance) volume of the vessel behind
     * @return the volume
     */
    public static Volume before(Volume useful) {
        return useful.times(BEHIND.value());
    }
}
