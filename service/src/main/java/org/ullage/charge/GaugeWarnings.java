package org.ullage.charge;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** What stands against a gauge. */
final class GaugeWarnings {

    private static final Source ON_THE_DIAL = Source.computed("range of the dial", "highest pressure against its end");

    private GaugeWarnings() {}

    static List<Caution> of(GaugeChoice choice) {
        List<Caution> warnings = new ArrayList<>();
        if (!choice.gauge().range().covers(choice.highest())) {
            warnings.add(new Caution(
                    "The dial ends at " + choice.gauge().range().high().textInBothSystems()
                            + " and the gauge will see " + choice.highest().textInBothSystems()
                            + ": it will be damaged.",
                    ON_THE_DIAL));
        }
        if (!choice.decides()) {
            warnings.add(new Caution(
                    "The gauge cannot decide: it may be off by "
                            + choice.error().textInBothSystems()
                            + " either way, and "
                            + choice.tolerance().limit().textInBothSystems() + " must be told. "
                            + remedy(choice),
                    choice.tolerance().source()));
        }
        if (!choice.gauge().range().inMiddleHalf(choice.reading())) {
            warnings.add(new Caution(
                    "The reading stands in the " + choice.gauge().range().part(choice.reading())
                            + " of the dial, not in its middle half.",
                    GaugeRangeRules.MIDDLE_HALF.source()));
        }
        return List.copyOf(warnings);
    }

    private static String remedy(GaugeChoice choice) {
        return choice.better()
                .filter(gauge -> choice.tolerance().holds(gauge.errorAt(choice.reading())))
                .map(gauge -> "A finer range will do.")
                .orElse("No range at hand will do in this class: take a finer class.");
    }
}
