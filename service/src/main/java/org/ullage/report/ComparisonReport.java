package org.ullage.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ullage.comparison.MethodComparison;
import org.ullage.comparison.MethodComparison.Answer;
import org.ullage.comparison.MethodComparison.Refusal;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/** The page of a comparison of methods. */
public final class ComparisonReport {

    private ComparisonReport() {}

    /**
     * What each method requires as a chart and a table, what to take, the job, what each method counts up to, who refuses and why,
     * warnings and cautions.
     *
     * @param comparison the answers
     * @param system metric or inch-pound
     * @return the page
     */
    public static Document of(MethodComparison comparison, UnitSystem system) {
        return Document.titled("One expansion vessel by several methods")
                .with(
                        Heading.section("The answers"),
                        MethodComparisonChart.of(comparison, system),
                        answers(comparison, system),
                        Paragraph.of(
                                "Pressures are gauge, at the vessel. Between the largest and the smallest answer lie "
                                        + comparison.spread().text(system) + "."),
                        Paragraph.of(comparison.recommendation(system)),
                        Heading.section("The job"),
                        JobTable.of(comparison.job(), system))
                .with(refusals(comparison.refusals()))
                .with(
                        Heading.section("What each method means by hot, and its source"),
                        sources(comparison.answers()),
                        Heading.section("Warnings about these answers"),
                        new CautionList(warnings(comparison.answers())))
                .with(cautions(comparison.answers()));
    }

    /** The name of the method, then numbers. */
    private static Table answers(MethodComparison comparison, UnitSystem system) {
        List<Column> columns = new ArrayList<>();
        MethodComparison.HEADER.forEach(
                name -> columns.add(columns.isEmpty() ? Column.words(name) : Column.numbers(name)));
        return new Table("What each method requires", columns, comparison.rows(system));
    }

    private static List<Block> refusals(List<Refusal> refusals) {
        if (refusals.isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = refusals.stream()
                .map(refusal -> List.of(refusal.method().name(), refusal.reason()))
                .toList();
        return List.of(
                Heading.section("Methods that refuse the job"),
                new Table("Who refuses, and why", List.of(Column.words("method"), Column.words("reason")), rows));
    }

    private static Table sources(List<Answer> answers) {
        List<List<String>> rows = answers.stream()
                .map(answer -> answer.sizing().method())
                .map(method -> List.of(
                        method.name(),
                        method.hotBasis().toString(),
                        method.source().toString()))
                .toList();
        return new Table(
                "Which temperature each method counts up to",
                List.of(Column.words("method"), Column.words("hot means"), Column.words("source")),
                rows);
    }

    /** A warning that several methods share stands once, with their names. */
    private static List<Caution> warnings(List<Answer> answers) {
        Map<Caution, List<String>> byWarning = new LinkedHashMap<>();
        answers.forEach(answer -> answer.sizing()
                .warnings()
                .forEach(warning -> byWarning
                        .computeIfAbsent(warning, first -> new ArrayList<>())
                        .add(answer.sizing().method().name())));
        return byWarning.entrySet().stream()
                .map(entry -> new Caution(
                        entry.getKey().text() + " (" + String.join(", ", entry.getValue()) + ")",
                        entry.getKey().source()))
                .toList();
    }

    /** They come with the job, so they are the same for every method. */
    private static List<Block> cautions(List<Answer> answers) {
        return answers.isEmpty()
                ? List.of()
                : List.of(
                        Heading.section("Cautions for the work"),
                        new CautionList(answers.get(0).sizing().cautions()));
    }
}
