package org.ullage.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/** Argues from the mass balance which answers of a comparison are short and which generous. */
final class MethodRecommendation {

    private MethodRecommendation() {}

    static String of(MethodComparison comparison, UnitSystem system) {
        List<MethodComparison.Answer> judged = comparison.answers().stream()
                .filter(answer -> answer.grade().beyond() != null)
                .toList();
        if (judged.isEmpty()) {
            return "The mass balance cannot judge these answers: it needs both temperatures and a closed vessel.";
        }
        return shortOnes(judged, system) + generousOnes(judged, system) + advice(judged, system);
    }

    private static String shortOnes(List<MethodComparison.Answer> judged, UnitSystem system) {
        String names = names(judged, answer -> answer.grade().isShort(), system);
        return names.isEmpty()
                ? "By the mass balance no method is short: in every vessel the expansion stays below the valve. "
                : "By the mass balance the valve would lift with " + names + ". ";
    }

    private static String generousOnes(List<MethodComparison.Answer> judged, UnitSystem system) {
        List<MethodComparison.Answer> generous = judged.stream()
                .filter(answer -> !answer.grade().isShort())
                .sorted(Comparator.comparing(MethodRecommendation::beyond))
                .toList();
        if (generous.isEmpty()) {
            return "";
        }
        return "Beyond the smallest vessel that holds it, " + name(generous.get(0), system) + " keeps least and "
                + name(generous.get(generous.size() - 1), system) + " most. ";
    }

    private static Volume beyond(MethodComparison.Answer answer) {
        Volume beyond = answer.grade().beyond();
        return beyond == null ? Volume.litres(0) : beyond;
    }

    private static String name(MethodComparison.Answer answer, UnitSystem system) {
        return answer.sizing().method().name() + " (" + answer.grade().text(system) + ")";
    }

    private static String names(
            List<MethodComparison.Answer> judged, Predicate<MethodComparison.Answer> which, UnitSystem system) {
        return judged.stream().filter(which).map(answer -> name(answer, system)).collect(Collectors.joining(", "));
    }

    private static String advice(List<MethodComparison.Answer> judged, UnitSystem system) {
        Volume smallestGood = judged.stream()
                .filter(answer -> !answer.grade().isShort())
                .map(answer -> answer.sizing().requiredVolume())
                .findFirst()
                .orElse(null);
        if (smallestGood == null) {
            return "Take none of them: raise the final pressure or lower the temperatures first.";
        }
        return "Take the method the job's code asks for if it is not short; without one, no less than "
                + smallestGood.text(system)
                + ", and a reserve for losses on top. A larger vessel only costs money, a smaller one lifts the valve.";
    }
}
