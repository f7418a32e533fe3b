package org.ullage.operation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Vessels on one loop on bare SI numbers, alike ones taken together and in an order that does not depend on the caller's. */
final class BankNumbers implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final Comparator<GasGroup> ORDER = Comparator.comparingDouble(GasGroup::starts)
            .thenComparingDouble(GasGroup::head)
            .thenComparingDouble(GasGroup::limitShare)
            .thenComparingDouble(GasGroup::nominal);

    private final GasGroup[] groups;

    BankNumbers(List<GasGroup> vessels) {
        List<GasGroup> together = new ArrayList<>();
        for (GasGroup vessel : vessels.stream().sorted(ORDER).toList()) {
            int last = together.size() - 1;
            if (last >= 0 && together.get(last).actsLike(vessel)) {
                together.set(last, together.get(last).and(vessel));
            } else {
                together.add(vessel);
            }
        }
        this.groups = together.toArray(GasGroup[]::new);
    }

    double water(double pascals) {
        double water = 0;
        for (GasGroup group : groups) {
            water += group.water(pascals);
        }
        return water;
    }

    double compliance(double pascals) {
        double compliance = 0;
        for (GasGroup group : groups) {
            compliance += group.compliance(pascals);
        }
        return compliance;
    }

    double capacity() {
        double capacity = 0;
        for (GasGroup group : groups) {
            capacity += group.capacity();
        }
        return capacity;
    }

    /** Lowest pressure the gas can hold up: where the last vessel with gas is empty of water; 0 if none has gas. */
    double floor() {
        for (GasGroup group : groups) {
            if (group.charge() > 0) {
                return Math.max(0, group.starts());
            }
        }
        return 0;
    }

    boolean hasGas() {
        return Arrays.stream(groups).anyMatch(group -> group.charge() > 0);
    }

    /** Whether the vessels act as one with gas, so that pressure follows from water in closed form. */
    boolean isOne() {
        return groups.length == 1 && groups[0].charge() > 0;
    }

    GasGroup one() {
        return groups[0];
    }

    /** The pressure at which the vessels, of which one has gas, hold this much: more than at the floor, less than their capacity. */
    double pressureFor(double water) {
        if (isOne()) {
            return one().pressureFor(water);
        }
        return BracketedRoot.of(pascals -> water(pascals) - water, floor(), 2 * allAtShare(water / capacity()));
    }

    /** The pressure from which every vessel holds at least this share of its capacity. */
    private double allAtShare(double share) {
        double highest = 0;
        for (GasGroup group : groups) {
            highest = Math.max(highest, group.pressureFor(share * group.capacity()));
        }
        return highest;
    }
}
