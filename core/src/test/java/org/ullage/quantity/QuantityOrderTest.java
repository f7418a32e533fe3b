package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Equality, hash and order of any two values of one type. */
class QuantityOrderTest {

    @Property
    void equalityHashAndOrderFollowTheSiValue(@ForAll double any, @ForAll double other) {
        QuantityType.ALL.forEach(type -> followTheSiValue(type, any, other));
    }

    private static <Q extends Quantity<Q, D>, D> void followTheSiValue(
            QuantityType<Q, D> type, double any, double other) {
        double one = type.allowed(any);
        double two = type.allowed(other);
        Q first = type.ofSi().apply(one);
        Q again = type.ofSi().apply(one);
        Q second = type.ofSi().apply(two);
        assertThat(first).isEqualTo(again).hasSameHashCodeAs(again).isEqualByComparingTo(again);
        assertThat(first.equals(second)).isEqualTo(one == two);
        assertThat(Integer.signum(first.compareTo(second)))
                .isEqualTo(one == two ? 0 : one < two ? -1 : 1)
                .isEqualTo(-Integer.signum(second.compareTo(first)));
    }
}
