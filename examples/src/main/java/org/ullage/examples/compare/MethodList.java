package org.ullage.examples.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ullage.comparison.Convention;
import org.ullage.method.Method;
import org.ullage.provenance.Source;
import org.ullage.published.Methods;
import org.ullage.vessel.VesselKind;

/** Every method with its conventions, and where each convention comes from. */
final class MethodList {

    private MethodList() {}

    static String text() {
        return Methods.all().stream().map(MethodList::text).collect(Collectors.joining("\n"));
    }

    /** One method; the numbers in brackets point to the sources below it. */
    private static String text(Method method) {
        Map<Source, Integer> notes = new LinkedHashMap<>();
        StringBuilder text = new StringBuilder();
        text.append(method.name()).append(": ").append(method.title());
        text.append(note(notes, method.source())).append("\n  vessels: ").append(kinds(method));
        for (Convention convention : Convention.values()) {
            text.append("\n  ").append(convention).append(": ").append(words(convention, method));
            text.append(note(notes, source(convention, method)));
        }
        text.append('\n');
        notes.forEach((source, number) ->
                text.append('[').append(number).append("] ").append(source).append('\n'));
        return text.toString();
    }

    private static String note(Map<Source, Integer> notes, Source source) {
        notes.putIfAbsent(source, notes.size() + 1);
        return " [" + notes.get(source) + "]";
    }

    /** A row for each convention of each method. */
    static List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("method", "title", "vessels", "convention", "words", "source"));
        for (Method method : Methods.all()) {
            for (Convention convention : Convention.values()) {
                rows.add(List.of(
                        method.name(),
                        method.title(),
                        kinds(method),
                        convention.toString(),
                        words(convention, method),
                        source(convention, method).toString()));
            }
        }
        return rows;
    }

    private static String kinds(Method method) {
        return method.kinds().stream().sorted().map(VesselKind::word).collect(Collectors.joining(", "));
    }

    /** A convention may say something else for each kind of vessel. */
    private static String words(Convention convention, Method method) {
        return method.kinds().stream()
                .sorted()
                .map(kind -> convention.words(method, kind))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** The convention's own source, or the method's where it has none of its own. */
    private static Source source(Convention convention, Method method) {
        return switch (convention) {
            case EXPANSION -> method.expansion().source();
            case PIPE_CREDIT -> method.pipeCredit().source();
            case RESERVE -> method.reserve().source();
            case VAPOUR -> method.vapour().collectorShare().source();
            case COLD_PRESSURE -> method.coldPressure().source();
            case FINAL_PRESSURE -> method.finalPressure().source();
            case CHARGE -> method.charge(method.kinds().iterator().next()).source();
            case GAS_TEMPERATURES -> method.gasTemperatures().source();
            case AIR_PRESSURE -> method.atmosphere().source();
            default -> method.source();
        };
    }
}
