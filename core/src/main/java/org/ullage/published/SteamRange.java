package org.ullage.published;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.UnitSystem;

/**
 * How far vapour reaches into the pipes below a solar field that stands still: the steam power of the field divided by what a metre of
 * pipe loses. Its content belongs to the stagnation contents. All figures are remembered.
 *
 * <p>Steam power for each m2 of collector: about 50 to 60 W for flat plates that empty well, over 100 W for those that do not, up to about
 * 150 W for vacuum tubes. An insulated pipe loses about 25 to 30 W/m.
 */
public final class SteamRange {

    private static final Source RESEARCH = Source.fromMemory(
            "IEA SHC Task 26 and VDI 6002, stagnation of solar loops", "steam power and loss of the pipes");

    /** Steam power for each m2 of a flat-plate field that empties well, upper end. */
    public static final Constant WELL_EMPTYING = new Constant("q_s", 60, "W/m2", RESEARCH);

    /** Steam power for each m2 of a flat-plate field that empties badly. */
    public static final Constant BADLY_EMPTYING = new Constant("q_s", 100, "W/m2", RESEARCH);

    /** Steam power for each m2 of vacuum tubes, upper end. */
    public static final Constant VACUUM_TUBES = new Constant("q_s", 150, "W/m2", RESEARCH);

    /** Loss of a metre of insulated pipe full of steam, lower end. */
    public static final Constant INSULATED_PIPE = new Constant("q_p", 25, "W/m", RESEARCH);

    private SteamRange() {}

    /**
     * Metres of pipe filled with vapour.
     *
     * @param squareMetres collector area, zero or more
     * @param steamPower one of the constants above, or a value of the caller's in W/m2
     * @param pipeLoss loss of a metre of pipe full of steam, above zero
     * @return the length, flow and return together
     * @throws OutOfRangeException if area or steam power is negative or the loss is not above zero
     */
    public static Length of(double squareMetres, Constant steamPower, Power pipeLoss) {
        double watts = squareMetres * steamPower.value();
        if (!(watts >= 0 && pipeLoss.si() > 0)) {
            throw new OutOfRangeException(
                    "steam power and pipe loss",
                    watts + " W and " + pipeLoss.text(UnitSystem.SI) + " a metre",
                    "zero or more and above zero",
                    "check area and loss");
        }
        return Length.metres(watts / pipeLoss.si());
    }
}
