package org.ullage.quantity;

/**
 * A quantity whose amounts add up: the sum of two, a multiple, and the ratio of two have a meaning.
 *
 * @param <Q> the quantity type itself
 * @param <D> the dimension of its units
 */
public abstract class AdditiveQuantity<Q extends AdditiveQuantity<Q, D>, D> extends Quantity<Q, D> {

    private static final long serialVersionUID = 1L;

    AdditiveQuantity(Kind<Q, D> kind, double si) {
        super(kind, si);
    }

    abstract Q make(double si);

    /**
     * The amount as a difference for people, with its sign.
     *
     * @param system metric or inch-pound
     * @return such as {@code +12.3 L}
     */
    public final String signedText(UnitSystem system) {
        return (si() < 0 ? "" : "+") + text(system);
    }

    /**
     * The sum.
     *
     * @param other the amount to add
     * @return this and the other together
     * @throws OutOfRangeException if the sum is not allowed for this quantity
     */
    public final Q plus(Q other) {
        return make(si() + other.si());
    }

    /**
     * The difference.
     *
     * @param other the amount to take away
     * @return this without the other
     * @throws OutOfRangeException if the difference is not allowed for this quantity, such as a negative mass
     */
    public final Q minus(Q other) {
        return make(si() - other.si());
    }

    /**
     * A multiple.
     *
     * @param factor a finite number
     * @return this amount times the factor
     * @throws OutOfRangeException if the product is not allowed for this quantity
     */
    public final Q times(double factor) {
        return make(si() * factor);
    }

    /**
     * The ratio of two amounts.
     *
     * @param other the amount to divide by, not zero
     * @return how many times the other goes into this
     * @throws OutOfRangeException if the other is zero, or so small that the ratio is not finite
     */
    public final double dividedBy(Q other) {
        double ratio = si() / other.si();
        if (!Double.isFinite(ratio)) {
            throw new OutOfRangeException(
                    other.kind().name() + " to divide by",
                    other.toString(),
                    "far enough from zero for a finite ratio",
                    "check the quantity that is divided by");
        }
        return ratio;
    }
}
