package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.condition.Finding;
import org.ullage.condition.FluidFindings;
import org.ullage.condition.Judgement;
import org.ullage.condition.LoopTrait;

/** The page of a fluid sample. */
public final class FluidReport {

    private FluidReport() {}

    /**
     * What the fluid calls for, each finding with its source, where the sources disagree, and cautions.
     *
     * @param findings what the sample says
     * @return the page; its temperatures stand in both unit systems
     */
    public static Document of(FluidFindings findings) {
        return Document.titled("Sample of the loop's fluid")
                .with(findings(findings))
                .with(Heading.section("Cautions for the work"), new CautionList(findings.cautions()));
    }

    /** The findings without a title, for a page of which they are a part. */
    static List<Block> findings(FluidFindings findings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Paragraph.of(
                "The fluid as a whole: " + findings.verdict().word() + ". Judged as " + traits(findings) + "."));
        blocks.add(findings(findings.findings()));
        blocks.addAll(contradictions(findings.findings()));
        return blocks;
    }

    private static String traits(FluidFindings findings) {
        String words = findings.sample().traits().stream()
                .sorted()
                .map(LoopTrait::word)
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? "plain water in a loop of steel and copper" : words;
    }

    private static Table findings(List<Finding> findings) {
        List<List<String>> rows = findings.stream()
                .map(finding -> List.of(
                        finding.subject(),
                        finding.verdict().word(),
                        finding.meaning(),
                        finding.source().toString()))
                .toList();
        return new Table(
                "What was looked at, and what it calls for",
                List.of(
                        Column.words("looked at"),
                        Column.words("verdict"),
                        Column.words("why"),
                        Column.words("source")),
                rows);
    }

    private static List<Block> contradictions(List<Finding> findings) {
        List<Block> blocks = new ArrayList<>();
        findings.stream().filter(Finding::isContradicted).forEach(finding -> {
            blocks.add(Heading.subsection(finding.subject()));
            blocks.add(new BulletList(
                    finding.judgements().stream().map(Judgement::text).toList()));
        });
        if (!blocks.isEmpty()) {
            blocks.add(0, Heading.section("Where the sources disagree"));
            blocks.add(1, Paragraph.of("The strictest limit decides unless the fluid's own data sheet is given."));
        }
        return blocks;
    }
}
