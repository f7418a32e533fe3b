package org.ullage.operation;

import java.io.Serializable;
import org.ullage.vessel.GasLaw;

/**
 * Vessels of one charge, one level and one share of acceptance on bare SI numbers: they act as one. Pressures are absolute and at the
 * loop's reference point.
 *
 * @param nominal V_n, cubic metres
 * @param charge p_0 of the gas that is left, pascals; 0 for a shell full of water
 * @param limitShare largest share of V_n that may be water, 1 if only the gas limits it
 * @param head what the reference pressure is above the vessel's own, pascals
 */
record GasGroup(double nominal, double charge, double limitShare, double head) implements Serializable {

    boolean actsLike(GasGroup other) {
        return charge == other.charge && limitShare == other.limitShare && head == other.head;
    }

    GasGroup and(GasGroup other) {
        return new GasGroup(nominal + other.nominal, charge, limitShare, head);
    }

    double water(double pascals) {
        double own = pascals - head;
        return own > 0 ? nominal * Math.min(limitShare, GasLaw.waterShare(charge, own)) : 0;
    }

    /** dV/dp of the water, which is that of the gas: V_n p_0 / p^2 while the membrane moves, else nothing. */
    double compliance(double pascals) {
        if (pascals <= starts() || pascals >= stops()) {
            return 0;
        }
        double own = pascals - head;
        return nominal * charge / (own * own);
    }

    /** Reference pressure from which it takes water. */
    double starts() {
        return charge + head;
    }

    /** Reference pressure at which the membrane is at its stop; infinite if it has none. */
    double stops() {
        return pressureFor(capacity());
    }

    double capacity() {
        return nominal * limitShare;
    }

    double pressureFor(double water) {
        return head + charge / (1 - water / nominal);
    }
}
