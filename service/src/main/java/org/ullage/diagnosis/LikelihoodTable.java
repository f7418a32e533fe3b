package org.ullage.diagnosis;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/** The judgements behind a diagnosis: how often a hypothesis is true, and how often a sign is found where it is. */
final class LikelihoodTable {

    private static final String RESOURCE = "sign-likelihoods.tsv";

    private static final CitedTable TABLE = CitedTable.read(LikelihoodTable.class, RESOURCE);

    /** What stands behind every figure of the table, and behind the bounds that go with it. */
    static final Source SOURCE = TABLE.source("j");

    private static final String PRIOR = "PRIOR";

    /** No clue may rule a hypothesis out for good: this much of each is left to what nobody thought of. */
    static final Constant SURPRISE = new Constant("epsilon", 0.002, "1", SOURCE);

    private static final Map<String, Map<Hypothesis, Double>> ROWS = rows();

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
            throw new IllegalStateException("the jar is damaged: " + RESOURCE + " lacks " + row + ", " + hypothesis);
        }
        return number;
    }

    private static Map<String, Map<Hypothesis, Double>> rows() {
        Map<String, Map<Hypothesis, Double>> rows = new HashMap<>();
        for (Map<String, String> cells : TABLE.rows()) {
            Map<Hypothesis, Double> row = new EnumMap<>(Hypothesis.class);
            String sign = "";
            for (Map.Entry<String, String> cell : cells.entrySet()) {
                if (cell.getKey().equals("sign")) {
                    sign = cell.getValue();
                } else {
                    row.put(Hypothesis.valueOf(cell.getKey()), Double.valueOf(cell.getValue()));
                }
            }
            rows.put(sign, row);
        }
        return rows;
    }
}
