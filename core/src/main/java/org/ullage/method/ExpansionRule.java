package org.ullage.method;

import java.io.Serializable;
import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;

/** Which expansion a method counts, as a share of the contents. */
public interface ExpansionRule extends Serializable {

    /**
     * The expansion between two states as a share of the contents, on bare SI numbers.
     *
     * @param fluid the loop's fluid
     * @param states the two states
     * @return the share, before any pipe credit
     * @throws OutOfRangeException if a state is outside the rule or the fluid's model
     */
    double fraction(LoopFluid fluid, ThermalStates states);

    /**
     * Whether the rule needs the lowest temperature.
     *
     * @param fluid the loop's fluid
     * @return false if it counts from a temperature of its own
     */
    boolean needsCold(LoopFluid fluid);

    /**
     * Whether the rule needs the highest temperature.
     *
     * @return false if its expansion is one number
     */
    default boolean needsHot() {
        return true;
    }

    /**
     * Whether the rule was printed for open tanks over loops that would boil under the pressure of the air alone: the tank then
     * stands high enough above the hottest point, which the rule cannot check and warns about.
     *
     * @return false if a loop that would boil must be refused
     */
    default boolean coversBoilingAtTheTank() {
        return false;
    }

    /**
     * The rule's steps.
     *
     * @param fluid the loop's fluid
     * @param states the two states
     * @param fraction the result of {@link #fraction}
     * @return the steps in order
     */
    List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction);

    /**
     * What the user of the rule must know about it in this case.
     *
     * @param fluid the loop's fluid
     * @param states the two states
     * @return warnings, may be empty
     */
    List<Caution> warnings(LoopFluid fluid, ThermalStates states);

    /**
     * Where the rule comes from.
     *
     * @return its source
     */
    Source source();
}
