package org.ullage.published;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * Least bore of the pipe between loop and vessel, by national rules. All give the inner diameter; take the next larger made pipe. No valve
 * that can be closed by accident belongs in it.
 */
public final class ExpansionPipe {

    /** Polish rule: d = 0.7 sqrt(V_u). */
    public static final Source POLISH =
            Source.secondHand("PN-B-02414:1999", "d = 0.7 sqrt(V_u) mm, V_u in L", "a collection of formulas");

    /** Polish least bore. */
    public static final Source POLISH_LEAST = Source.fromMemory("PN-B-02414:1999", "not below 20 mm");

    /** Czech rules: d = 10 + 0.6 sqrt(Q) without steam, 15 + 1.4 sqrt(Q) where steam is possible. */
    public static final Source CZECH = Source.fromMemory("CSN 06 0830", "bore in mm by output in kW");

    /** UK domestic least bore. */
    public static final Source UK = Source.commonPractice("15 mm, without a valve, in a UK boiler instruction");

    /** Least bore in UK domestic heating. */
    public static final Length UK_DOMESTIC_LEAST = Length.millimetres(new Constant("d_min", 15, "mm", UK).value());

    private static final Constant PER_ROOT_LITRE = new Constant("k_d", 0.7, "mm/L^0.5", POLISH);
    private static final Constant LEAST_MM = new Constant("d_min", 20, "mm", POLISH_LEAST);

    private static final Constant LIQUID_BASE = new Constant("d_0", 10, "mm", CZECH);
    private static final Constant LIQUID_PER_ROOT_KW = new Constant("k_d", 0.6, "mm/kW^0.5", CZECH);
    private static final Constant STEAM_BASE = new Constant("d_0", 15, "mm", CZECH);
    private static final Constant STEAM_PER_ROOT_KW = new Constant("k_d", 1.4, "mm/kW^0.5", CZECH);

    private ExpansionPipe() {}

    /**
     * The Polish rule, by the water the vessel takes.
     *
     * @param useful expansion with reserve, zero or more
     * @return inner diameter, at least 20 mm
     * @throws OutOfRangeException if the volume is negative
     */
    public static Length polish(Volume useful) {
        if (useful.si() < 0) {
            throw new OutOfRangeException(
                    "useful volume", useful.text(UnitSystem.SI), "zero or more", "give the water the vessel takes");
        }
        double litres = useful.si() * 1000;
        return Length.millimetres(Math.max(LEAST_MM.value(), PER_ROOT_LITRE.value() * Math.sqrt(litres)));
    }

    /**
     * The Czech rule where no steam can come into the pipe, by the output of the boilers.
     *
     * @param output of the boilers, zero or more
     * @return inner diameter
     * @throws OutOfRangeException if the output is negative
     */
    public static Length czech(Power output) {
        return czech(output, LIQUID_BASE, LIQUID_PER_ROOT_KW);
    }

    /**
     * The Czech rule where steam is possible, by the output of the boilers.
     *
     * @param output of the boilers, zero or more
     * @return inner diameter
     * @throws OutOfRangeException if the output is negative
     */
    public static Length czechWithSteam(Power output) {
        return czech(output, STEAM_BASE, STEAM_PER_ROOT_KW);
    }

    private static Length czech(Power output, Constant base, Constant perRootKilowatt) {
        if (output.si() < 0) {
            throw new OutOfRangeException(
                    "output", output.text(UnitSystem.SI), "zero or more", "give the output of the boilers");
        }
        double kilowatts = output.si() / 1000;
        return Length.millimetres(base.value() + perRootKilowatt.value() * Math.sqrt(kilowatts));
    }
}
