package org.ullage.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Cuts a report into sections. */
final class Sections {

    static final String TITLE = "Reference report";

    private static final String TRUST =
            "PUBLISHED: printed in a document that is named. COMPUTED: with a general reference library or from a published"
                    + " formula. FROM_MEMORY: remembered, not checked against the document. COMMON_PRACTICE: used in the"
                    + " trade without a document.";

    private Sections() {}

    static List<Section> summary(ReferenceReport report) {
        return List.of(
                total(report),
                byQuestion(report),
                byFile(report),
                byProvenance(report),
                failures(report),
                mistakes(report),
                misprints(report));
    }

    static List<Section> whole(ReferenceReport report, List<FaultTrial> trials) {
        List<Section> sections = new ArrayList<>(summary(report));
        trials.forEach(trial -> sections.add(TrialSections.matrix(trial)));
        report.byFile().forEach(file -> sections.add(cases(report, file.file())));
        return sections;
    }

    static Section byFile(ReferenceReport report) {
        return new Section(
                "By file",
                "\"Differ\" counts figures that are misprinted or rounded away from their own rule; each is explained below."
                        + " The worst difference is that of a passed case from the figure that is right.",
                List.of("file", "cases", "agree", "differ (explained)", "refused", "worst relative difference"),
                report.byFile().stream().map(Sections::row).toList());
    }

    private static List<String> row(FileSummary file) {
        return List.of(
                file.file(),
                text(file.tally().cases()),
                text(file.agree()),
                text(file.differ()),
                text(file.refused()),
                file.worstText());
    }

    private static Section total(ReferenceReport report) {
        List<List<String>> rows = new ArrayList<>();
        report.byVerdict().forEach((verdict, tally) -> rows.add(row(verdict.word(), tally)));
        return new Section("Summary", report.total() + ".", tallyHeader("verdict"), rows);
    }

    private static Section byQuestion(ReferenceReport report) {
        List<List<String>> rows = new ArrayList<>();
        report.byQuestion().forEach((asked, tally) -> rows.add(row(asked.words(), tally)));
        return new Section("By question", "What was asked.", tallyHeader("question"), rows);
    }

    private static Section byProvenance(ReferenceReport report) {
        List<List<String>> rows = new ArrayList<>();
        report.byProvenance().forEach((provenance, tally) -> rows.add(row(provenance.name(), tally)));
        return new Section("By provenance", TRUST, tallyHeader("provenance"), rows);
    }

    private static List<String> tallyHeader(String first) {
        return List.of(first, "cases", "passed", "failed", "not answered");
    }

    private static List<String> row(String first, Tally tally) {
        return List.of(
                first, text(tally.cases()), text(tally.passed()), text(tally.failed()), text(tally.notAnswered()));
    }

    private static Section failures(ReferenceReport report) {
        List<List<String>> rows = report.failures().stream()
                .map(result ->
                        List.of(result.id(), result.referenceCase().question().toString(), result.remark()))
                .toList();
        return new Section(
                "Failures",
                rows.isEmpty() ? "None." : rows.size() + ".",
                List.of("id", "question", "what is wrong"),
                rows);
    }

    private static Section mistakes(ReferenceReport report) {
        List<Suspicion> suspicions = MistakeSearch.in(report);
        String text = suspicions.isEmpty()
                ? report.failures().isEmpty() ? "None." : "None of the known mistakes explains the failures."
                : suspicions.stream().map(Suspicion::toString).collect(Collectors.joining("; ", "", "."));
        return new Section("Likely mistake", text, List.of(), List.of());
    }

    private static Section misprints(ReferenceReport report) {
        return new Section(
                "Misprints and roundings",
                "Stated figures that are wrong by more than their own last digit. The implementation does not repeat them.",
                List.of("id", "stated", "right", "computed", "explanation", "source"),
                report.misprints().stream().map(Sections::misprint).toList());
    }

    private static List<String> misprint(CaseResult result) {
        Target right = result.referenceCase().target();
        return List.of(
                result.id(),
                result.statedText(),
                right == null ? "" : right.text(),
                result.computedText(),
                result.referenceCase().explanation(),
                result.referenceCase().source().toString());
    }

    private static Section cases(ReferenceReport report, String file) {
        return new Section(
                file,
                "",
                List.of(
                        "id",
                        "question",
                        "source",
                        "stated",
                        "computed",
                        "difference",
                        "tolerance",
                        "provenance",
                        "verdict",
                        "outcome"),
                report.results().stream()
                        .filter(result -> result.referenceCase().file().equals(file))
                        .map(Sections::row)
                        .toList());
    }

    private static List<String> row(CaseResult result) {
        ReferenceCase referenceCase = result.referenceCase();
        String tolerance = result.toleranceText();
        return List.of(
                result.id(),
                referenceCase.question().toString(),
                sourceWithoutProvenance(referenceCase),
                result.statedText(),
                result.computedText(),
                result.differenceText(),
                tolerance.isEmpty() ? "" : tolerance + " (" + referenceCase.toleranceReason() + ")",
                result.provenance().name(),
                referenceCase.verdict().word(),
                result.outcome().toString());
    }

    /** The provenance has a column of its own. */
    private static String sourceWithoutProvenance(ReferenceCase referenceCase) {
        String source = referenceCase.source().toString();
        return source.substring(source.indexOf(']') + 1).strip();
    }

    private static String text(int number) {
        return String.valueOf(number);
    }
}
