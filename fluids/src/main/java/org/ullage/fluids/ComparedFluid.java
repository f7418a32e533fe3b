package org.ullage.fluids;

import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.quantity.OutOfRangeException;

/** One model in a {@link FluidComparison}: its expansion, or why it refuses. Immutable. */
public final class ComparedFluid implements Serializable {

    private static final long serialVersionUID = 1L;

    private final String label;
    private final boolean chosen;
    private final @Nullable Expansion expansion;
    private final @Nullable Double difference;
    private final String refusal;
    private final @Nullable Constant uncertainty;
    private final String remark;

    private ComparedFluid(
            String label,
            boolean chosen,
            @Nullable Expansion expansion,
            @Nullable Double difference,
            String refusal,
            @Nullable Constant uncertainty,
            String remark) {
        this.label = label;
        this.chosen = chosen;
        this.expansion = expansion;
        this.difference = difference;
        this.refusal = refusal;
        this.uncertainty = uncertainty;
        this.remark = remark;
    }

    static ComparedFluid answering(String label, boolean chosen, Expansion expansion, OptionalDouble chosenPercent) {
        Double difference = chosenPercent.isPresent() ? expansion.percent() - chosenPercent.getAsDouble() : null;
        Optional<StatedUncertainty> stated = stated(expansion.fluid());
        return new ComparedFluid(
                label,
                chosen,
                expansion,
                difference,
                "",
                stated.flatMap(StatedUncertainty::densityUncertainty).orElse(null),
                stated.map(StatedUncertainty::remark).orElse(""));
    }

    static ComparedFluid refusing(String label, boolean chosen, OutOfRangeException reason) {
        return new ComparedFluid(label, chosen, null, null, String.valueOf(reason.getMessage()), null, "");
    }

    private static Optional<StatedUncertainty> stated(LoopFluid fluid) {
        return fluid instanceof StatedUncertainty stated ? Optional.of(stated) : Optional.empty();
    }

    /**
     * The model for people.
     *
     * @return such as {@code Melinder 2010 at 30.6 mass% by ASHRAE's pairing}
     */
    public String label() {
        return label;
    }

    /**
     * Whether it is the one the others are held against.
     *
     * @return true for one row at most
     */
    public boolean isChosen() {
        return chosen;
    }

    /**
     * Densities and expansion.
     *
     * @return empty if the model refuses
     */
    public Optional<Expansion> expansion() {
        return Optional.ofNullable(expansion);
    }

    /**
     * How far its expansion lies above that of the chosen model.
     *
     * @return in percentage points, negative if it lies below; empty if either refuses
     */
    public OptionalDouble differencePoints() {
        return difference == null ? OptionalDouble.empty() : OptionalDouble.of(difference);
    }

    /**
     * Why the model refuses.
     *
     * @return what, value, allowed range and remedy; empty if it answers
     */
    public String refusal() {
        return refusal;
    }

    /**
     * How far the density may be off.
     *
     * @return empty if the model's source states none
     */
    public Optional<Constant> densityUncertainty() {
        return Optional.ofNullable(uncertainty);
    }

    /**
     * What has to be known about the model.
     *
     * @return a phrase, may be empty
     */
    public String remark() {
        return remark;
    }
}
