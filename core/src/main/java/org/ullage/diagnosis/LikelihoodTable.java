package org.ullage.diagnosis;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ullage.provenance.Source;

/** The judgements behind a diagnosis: how often a hypothesis is true, and how often a sign is found where it is. */
final class LikelihoodTable {

    static final Source SOURCE = Source.commonPractice(
            "judgement of this library: sign-likelihoods.tsv; no statistics of faults were found in print");

    private static final String RESOURCE = "sign-likelihoods.tsv";

    private static final String PRIOR = "PRIOR";

    private static final Map<String, Map<Hypothesis, Double>> ROWS = read();

    private LikelihoodTable() {}

    static double prior(Hypothesis hypothesis) {
        return number(PRIOR, hypothesis);
    }

    static double of(Sign sign, Hypothesis hypothesis) {
        return number(sign.name(), hypothesis);
    }

    /** How well an inspection tells two hypotheses apart: from 0, not at all, to 1. */
    static double separation(Inspection inspection, Hypothesis one, Hypothesis other) {
        return Arrays.stream(Sign.values())
                        .filter(sign -> sign.inspection() == inspection)
                        .mapToDouble(sign -> Math.abs(of(sign, one) - of(sign, other)))
                        .sum()
                / 2;
    }

    private static double number(String row, Hypothesis hypothesis) {
        Map<Hypothesis, Double> numbers = ROWS.get(row);
        Double number = numbers == null ? null : numbers.get(hypothesis);
        if (number == null) {
            throw new IllegalStateException(
                    "the core jar is damaged: " + RESOURCE + " lacks " + row + ", " + hypothesis);
        }
        return number;
    }

    private static Map<String, Map<Hypothesis, Double>> read() {
        try (InputStream stream = LikelihoodTable.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("the core jar is incomplete: it lacks " + RESOURCE);
            }
            return rows(new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> List.of(line.split("\t", -1)))
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + RESOURCE, e);
        }
    }

    private static Map<String, Map<Hypothesis, Double>> rows(List<List<String>> lines) {
        List<Hypothesis> columns =
                lines.get(0).stream().skip(1).map(Hypothesis::valueOf).toList();
        Map<String, Map<Hypothesis, Double>> rows = new HashMap<>();
        for (List<String> cells : lines.subList(1, lines.size())) {
            Map<Hypothesis, Double> row = new EnumMap<>(Hypothesis.class);
            for (int i = 0; i < columns.size(); i++) {
                row.put(columns.get(i), Double.valueOf(cells.get(i + 1)));
            }
            rows.put(cells.get(0), row);
        }
        return rows;
    }
}
