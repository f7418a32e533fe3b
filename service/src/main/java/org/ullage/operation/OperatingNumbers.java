package org.ullage.operation;

import java.io.Serializable;

/** Finds the one pressure at which the vessels give the room that the loop asks for, on bare SI numbers. */
final class OperatingNumbers implements Serializable {

    private static final long serialVersionUID = 1L;

    /** No pressure: the vessels are empty, or the loop boils. */
    static final double TOO_LOW = Double.NEGATIVE_INFINITY;

    /** No pressure up to the highest that is looked at. */
    static final double TOO_HIGH = Double.POSITIVE_INFINITY;

    /** 100 bar: every hydronic loop has given way long before. */
    private static final double HIGHEST_PASCALS = 1e7;

    /** Missing water that is rounding, as a share of the contents. */
    private static final double ROUNDING = 1e-12;

    /** Relative change of the pressure at which the closed form has settled; what is left is a thousandth of it. */
    private static final double SETTLED = 1e-10;

    private static final int MOST_ROUNDS = 12;

    private final LoopBalance loop;
    private final BankNumbers bank;

    OperatingNumbers(LoopBalance loop, BankNumbers bank) {
        this.loop = loop;
        this.bank = bank;
    }

    LoopBalance loop() {
        return loop;
    }

    BankNumbers bank() {
        return bank;
    }

    static boolean isPressure(double pascals) {
        return Double.isFinite(pascals);
    }

    /** Absolute pressure at a loop temperature, {@link #TOO_LOW} or {@link #TOO_HIGH}. */
    double pressure(double kelvins) {
        double closed = bank.isOne() ? (loop.isRigid ? atOnce(kelvins) : closed(kelvins)) : TOO_LOW;
        return isPressure(closed) ? closed : searched(kelvins);
    }

    private double searched(double kelvins) {
        double lowest = lowest(kelvins);
        double spare = bank.water(lowest) - loop.demand(kelvins, lowest);
        if (spare >= 0) {
            return isRounding(spare) ? lowest : TOO_LOW;
        }
        return lowest < HIGHEST_PASCALS ? bracketed(kelvins, lowest) : TOO_HIGH;
    }

    /**
     * p = p_0 / (1 - V_w / V_n), with V_w at the pressure found before: a fluid that does not mind the pressure settles at once, water
     * in a few rounds. Where little gas is left it does not settle; then, and where the vessel is empty or full or the loop boils,
     * {@link #TOO_LOW} asks for the search.
     */
    double closed(double kelvins) {
        GasGroup vessel = bank.one();
        double pascals = Math.max(loop.fillPascals, vessel.starts());
        for (int round = 0; round < MOST_ROUNDS && loop.isLiquid(kelvins, pascals); round++) {
            double water = loop.demand(kelvins, pascals);
            if (!(water > 0 && water < vessel.capacity())) {
                return TOO_LOW;
            }
            double next = vessel.pressureFor(water);
            if (next > HIGHEST_PASCALS || Math.abs(next - pascals) <= SETTLED * next) {
                return next > HIGHEST_PASCALS ? TOO_LOW : next;
            }
            pascals = next;
        }
        return TOO_LOW;
    }

    /** The same where neither fluid nor pipe minds the pressure: the first round is the answer. */
    private double atOnce(double kelvins) {
        GasGroup vessel = bank.one();
        double water = loop.demand(kelvins, loop.fillPascals);
        double pascals = water > 0 && water < vessel.capacity() ? vessel.pressureFor(water) : TOO_LOW;
        return pascals <= HIGHEST_PASCALS && loop.isLiquid(kelvins, pascals) ? pascals : TOO_LOW;
    }

    /** The same by bracketing, for any vessels. */
    double bracketed(double kelvins, double lowest) {
        if (bank.water(HIGHEST_PASCALS) < loop.demand(kelvins, HIGHEST_PASCALS)) {
            return TOO_HIGH;
        }
        return BracketedRoot.of(
                pascals -> bank.water(pascals) - loop.demand(kelvins, pascals), lowest, HIGHEST_PASCALS);
    }

    /** Whether a volume above zero is no more than rounding. */
    boolean isRounding(double volume) {
        return volume <= ROUNDING * loop.contents;
    }

    private double lowest(double kelvins) {
        return Math.max(bank.floor(), loop.boilingPressure(kelvins));
    }

    /** Water the loop lacks although the vessels have given all that their gas can push out. */
    double missing(double kelvins) {
        double lowest = lowest(kelvins);
        return Math.max(0, bank.water(lowest) - loop.demand(kelvins, lowest));
    }

    /** Whether the vessels could not give the room if the liquid could not be compressed and the pipe not stretched. */
    boolean isLiquidFull(double kelvins) {
        double pascals = Math.max(loop.fillPascals, loop.boilingPressure(kelvins));
        return loop.demand(kelvins, pascals) >= bank.capacity();
    }
}
