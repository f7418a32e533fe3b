package org.ullage.support;

import java.util.Arrays;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Area;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Units;

/** Threaded steel hanger rods with unified coarse thread, by diameter, threads per inch and recalled loads in pounds-force. */
public enum HangerRod {
    /** 3/8 in. */
    ROD_3_8("3/8", 0.375, 16, 610, 730, Mss.TABLE),
    /** 1/2 in. */
    ROD_1_2("1/2", 0.5, 13, 1130, 1350, Mss.TABLE),
    /** 5/8 in. */
    ROD_5_8("5/8", 0.625, 11, 1810, 2160, Mss.TABLE),
    /** 3/4 in. */
    ROD_3_4("3/4", 0.75, 10, 2710, 3230, Mss.TABLE),
    /** 7/8 in. */
    ROD_7_8("7/8", 0.875, 9, 3770, 4480, Mss.TABLE),
    /** 1 in. */
    ROD_1("1", 1, 8, 4960, 5900, Mss.TABLE);

    private static final Source ROOT_RULE = Source.secondHand(
            "table of threaded hanger rods",
            "12,000 psi reduced by 25 % to 9,000 psi on the root area",
            "an open engineering reference");

    private static final Constant ROOT_STRESS = new Constant("f", 9000, "psi", ROOT_RULE);

    /** Twice the depth of a coarse thread by its pitch: twice 0.6495. */
    private static final Constant TWICE_DEPTH = new Constant(
            "2h/p",
            1.299038,
            "1",
            Source.fromMemory(
                    "Unified and American National coarse threads", "basic minor diameter K = D - 1.299038 / n"));

    /** The recalled table, in a class of its own because the constants above need it first. */
    private static final class Mss {
        private static final Source TABLE = Source.fromMemory(
                "MSS SP-58, Pipe Hangers and Supports",
                "safe loads of threaded hanger rods; that they were raised in the 2002 edition is read");
    }

    private final String size;
    private final double inches;
    private final int threadsPerInch;
    private final double before2002;
    private final double from2002;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is an immutable record
    private final Source source;

    HangerRod(String size, double inches, int threadsPerInch, double before2002, double from2002, Source source) {
        this.size = size;
        this.inches = inches;
        this.threadsPerInch = threadsPerInch;
        this.before2002 = before2002;
        this.from2002 = from2002;
        this.source = source;
    }

    /**
     * The metal left at the root of a coarse thread.
     *
     * @param diameter major diameter of the thread
     * @param threadsPerInch threads per inch, above zero
     * @return pi / 4 (D - 1.299038 / n)^2
     * @throws OutOfRangeException if the thread leaves no metal
     */
    public static Area rootArea(Length diameter, double threadsPerInch) {
        Inputs.requireAbove("threads per inch", threadsPerInch, 0, "unified coarse threads have 4 to 20");
        Length root = diameter.minus(Length.of(TWICE_DEPTH.value() / threadsPerInch, Units.INCH));
        Inputs.requirePositive("root diameter of the rod", root, "check diameter and threads per inch");
        double radius = 0.5 * root.si();
        return Area.ofSi(Math.PI * radius * radius);
    }

    /**
     * The metal left at the root of this rod's thread.
     *
     * @return pi / 4 (D - 1.299038 / n)^2
     */
    public Area rootArea() {
        return rootArea(Length.of(inches, Units.INCH), threadsPerInch);
    }

    /**
     * The safe load.
     *
     * @param basis whose
     * @return the load
     */
    public Force load(RodLoads basis) {
        return switch (basis) {
            case ROOT_AREA_RULE -> byRootArea();
            case MSS_BEFORE_2002 -> Force.poundsForce(before2002);
            case MSS_2002_ON -> Force.poundsForce(from2002);
            case LOWEST -> lowest();
        };
    }

    private Force byRootArea() {
        return Force.ofSi(rootArea().si()
                * Stress.of(ROOT_STRESS.value(), Units.STRESS_PSI).si());
    }

    private Force lowest() {
        return Arrays.stream(RodLoads.values())
                .filter(basis -> basis != RodLoads.LOWEST)
                .map(this::load)
                .min(Force::compareTo)
                .orElseThrow();
    }

    /**
     * Where a safe load comes from.
     *
     * @param basis whose
     * @return its source
     */
    public Source source(RodLoads basis) {
        if (basis == RodLoads.LOWEST) {
            return Arrays.stream(RodLoads.values())
                    .filter(other -> other != RodLoads.LOWEST && load(other).equals(lowest()))
                    .findFirst()
                    .map(this::source)
                    .orElseThrow();
        }
        return basis == RodLoads.ROOT_AREA_RULE ? ROOT_RULE : source;
    }

    /**
     * A load on the rod against its safe load.
     *
     * @param load pull on one rod, zero or more
     * @param basis whose safe load
     * @return the verdict with its margin
     * @throws OutOfRangeException if the load is negative
     */
    public LimitCheck<Force> check(Force load, RodLoads basis) {
        return new LimitCheck<>("pull on " + this + " by " + basis, load, load(basis), source(basis));
    }

    /**
     * The rod in words.
     *
     * @return such as {@code 3/8 in rod}
     */
    @Override
    public String toString() {
        return size + " in rod";
    }
}
