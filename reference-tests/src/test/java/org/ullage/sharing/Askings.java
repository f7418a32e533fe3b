package org.ullage.sharing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All questions, by what they are about. */
final class Askings {

    private Askings() {}

    static Map<String, List<Asking>> byIdea() {
        Map<String, List<Asking>> ideas = new LinkedHashMap<>();
        ideas.put("contents", SizingAskings.contents());
        ideas.put("methods", SizingAskings.methods());
        ideas.put("comparison", SizingAskings.comparison());
        ideas.put("fluids", FluidAskings.all());
        ideas.put("uncertainty", UncertaintyAskings.all());
        ideas.put("choice", OperationAskings.choice());
        ideas.put("operation", OperationAskings.curve());
        ideas.put("charge", ServiceAskings.charge());
        ideas.put("diagnosis", ServiceAskings.diagnosis());
        ideas.put("record", ServiceAskings.record());
        ideas.put("support", SupportAskings.all());
        ideas.put("report", ReportAskings.all());
        return ideas;
    }

    static List<Asking> all() {
        return byIdea().values().stream().flatMap(List::stream).toList();
    }
}
