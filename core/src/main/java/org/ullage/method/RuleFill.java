package org.ullage.method;

import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Caution;

/** Says so when a rule counts the expansion from another temperature than the loop's lowest. */
final class RuleFill {

    /** A fill temperature this close to the rule's own makes no difference worth a warning. */
    private static final Constant SAME_FILL = new Constant(
            "dt_fill", 10, "K", Source.computed("IAPWS-IF97", "water expands by 0.15 % or less from 10 degC +- 10 K"));

    private RuleFill() {}

    static List<Caution> warnings(Temperature rulesFill, ThermalStates states, Source source) {
        if (!states.coldGiven() || Math.abs(states.coldKelvins() - rulesFill.si()) <= SAME_FILL.value()) {
            return List.of();
        }
        return List.of(new Caution(
                "This rule counts expansion from " + rulesFill.textInBothSystems() + ", not from the given "
                        + states.cold().textInBothSystems() + ".",
                source));
    }
}
