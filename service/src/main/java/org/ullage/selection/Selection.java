package org.ullage.selection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/**
 * The vessels chosen for a job. Immutable; it keeps its inputs, so runner-up, front and warnings are worked out when they are asked for.
 *
 * @param catalogue what there was to choose from
 * @param job what was to be chosen
 * @param chosen the best combination
 */
public record Selection(Catalogue catalogue, SelectionJob job, Combination chosen) implements SelectionResult {

    /**
     * The best combination but one, of those in which no vessel is superfluous.
     *
     * @return the runner-up with the reason why it lost, or null if there is no other combination
     */
    public @Nullable RunnerUp runnerUp() {
        List<int[]> two = BranchAndBound.bestTwo(Problem.of(catalogue, job));
        return two.size() < 2 ? null : RunnerUp.of(job, chosen, Combination.of(catalogue, two.get(1)));
    }

    /**
     * The combinations that no other one beats in price, footprint and number of vessels together.
     *
     * @return the front
     */
    public ParetoFront front() {
        return ParetoFront.of(catalogue, job);
    }

    /**
     * What was chosen beyond the requirement.
     *
     * @return volume, share and price of it
     */
    public Oversize oversize() {
        return Oversize.of(job.requirement(), chosen);
    }

    /**
     * What would happen with the next smaller vessels.
     *
     * @param cushion gas charge and pressures of the loop
     * @return the pressure it would reach, or null if there is nothing smaller that falls short
     */
    public @Nullable NextSizeDown nextSizeDown(SizedGas cushion) {
        return NextSizeDown.of(this, cushion);
    }

    /**
     * What could not be checked because it is not known.
     *
     * @return the warnings, may be empty
     */
    public List<Caution> warnings() {
        return SelectionCautions.warnings(this);
    }

    /**
     * The dangers of the work.
     *
     * @return the cautions, never empty
     */
    public List<Caution> cautions() {
        return SelectionCautions.CAUTIONS;
    }

    @Override
    public Selection orRefuse() {
        return this;
    }

    @Override
    public String text(UnitSystem system) {
        return SelectionText.of(this, system);
    }
}
