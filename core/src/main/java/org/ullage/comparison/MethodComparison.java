package org.ullage.comparison;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.published.Methods;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.TextTable;

/**
 * One job by several methods: the answers from the smallest vessel to the largest, each graded by the mass balance, and the methods
 * that refuse with their reasons. Immutable.
 *
 * @param job what is to be sized
 * @param answers the answers, smallest required volume first
 * @param refusals the methods that refuse
 */
public record MethodComparison(SizingJob job, List<Answer> answers, List<Refusal> refusals) implements Serializable {

    /**
     * One method's answer with its grade.
     *
     * @param sizing the answer
     * @param grade how it stands by the mass balance
     */
    public record Answer(Sizing sizing, MassBalanceGrade grade) implements Serializable {}

    /**
     * A method that refuses the job.
     *
     * @param method the method
     * @param reason why, in words
     */
    public record Refusal(Method method, String reason) implements Serializable {}

    /**
     * Copies the lists.
     *
     * @param job what is to be sized
     * @param answers the answers
     * @param refusals the methods that refuse
     */
    public MethodComparison {
        answers = List.copyOf(answers);
        refusals = List.copyOf(refusals);
    }

    /**
     * Puts a job to every method that ships with the library.
     *
     * @param job what is to be sized
     * @return the comparison
     */
    public static MethodComparison of(SizingJob job) {
        return of(job, Methods.all());
    }

    /**
     * Puts a job to several methods.
     *
     * @param job what is to be sized
     * @param methods the methods
     * @return the comparison
     */
    public static MethodComparison of(SizingJob job, List<Method> methods) {
        List<Answer> answers = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        for (Method method : methods) {
            try {
                Sizing sizing = method.size(job);
                answers.add(new Answer(sizing, MassBalanceGrade.of(sizing)));
            } catch (OutOfRangeException | MissingInputException refusal) {
                refusals.add(new Refusal(method, String.valueOf(refusal.getMessage())));
            }
        }
        answers.sort(Comparator.comparing(answer -> answer.sizing().requiredVolume()));
        return new MethodComparison(job, answers, refusals);
    }

    /**
     * Difference between the largest and the smallest answer.
     *
     * @return the spread, zero with fewer than two answers
     */
    public Volume spread() {
        return answers.isEmpty()
                ? Volume.litres(0)
                : required(answers.size() - 1).minus(required(0));
    }

    private Volume required(int index) {
        return answers.get(index).sizing().requiredVolume();
    }

    /**
     * Which methods the mass balance finds short and which generous, in words, and what to take.
     *
     * @param system metric or inch-pound
     * @return a few sentences
     */
    public String recommendation(UnitSystem system) {
        return MethodRecommendation.of(this, system);
    }

    /**
     * The comparison as an aligned table and the recommendation.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        TextTable table = new TextTable(HEADER);
        rows(system).forEach(table::add);
        StringBuilder text = new StringBuilder(table.text());
        text.append("spread ").append(spread().text(system)).append('\n');
        refusals.stream()
                .filter(refusal -> !isForOtherKinds(refusal))
                .forEach(refusal -> text.append(refusal.method().name())
                        .append(" refused: ")
                        .append(refusal.reason())
                        .append('\n'));
        String others = refusals.stream()
                .filter(this::isForOtherKinds)
                .map(refusal -> refusal.method().name())
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            text.append("for other kinds of vessel: ").append(others).append('\n');
        }
        return text.append(recommendation(system)).append('\n').toString();
    }

    private boolean isForOtherKinds(Refusal refusal) {
        return !refusal.method().kinds().contains(job.vessel().kind());
    }

    /**
     * The answers as rows of text, for CSV or a table of the caller's: name, required volume, net expansion, reserve, cold and final
     * pressure, and what is left by the mass balance.
     *
     * @param system metric or inch-pound
     * @return a row for each answer, in the order of {@link #HEADER}
     */
    public List<List<String>> rows(UnitSystem system) {
        return answers.stream().map(answer -> row(answer, system)).toList();
    }

    /** What the columns of {@link #rows} are. */
    public static final List<String> HEADER = List.of(
            "method", "required volume", "net expansion", "reserve", "cold", "final", "beyond the mass balance");

    private static List<String> row(Answer answer, UnitSystem system) {
        Sizing sizing = answer.sizing();
        return List.of(
                sizing.method().name(),
                sizing.requiredVolume().text(system),
                sizing.expansionVolume().text(system),
                sizing.reserveVolume().text(system),
                sizing.coldPressure().text(system),
                sizing.finalPressure().text(system),
                answer.grade().text(system));
    }
}
