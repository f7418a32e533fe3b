package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.provenance.CitedTable;
import org.ullage.quantity.Units;

/** Contents from outside diameter and wall against contents in print, with the slips of the print. */
class PublishedContentsTest {

    private static final double ONE_PERCENT = 0.01;

    static Stream<Map<String, String>> printed() {
        return CitedTable.read(Loop.class, "expected-published-contents.tsv").rows().stream();
    }

    @ParameterizedTest
    @MethodSource("printed")
    void agreesWithinTheRoundingOfThePrint(Map<String, String> row) {
        Pipe pipe =
                PipeStandard.named(row.get("standard")).size(row.get("size")).pipe();
        double printed = Double.parseDouble(row.get("printed"));
        double computed = in(row.get("unit"), pipe);
        double halfDigit = new BigDecimal(row.get("printed")).ulp().doubleValue() / 2;
        double difference = Math.abs(printed - computed);
        switch (row.get("note")) {
            case "misprint" -> assertThat(difference / computed).isGreaterThan(ONE_PERCENT);
            case "last digit" -> assertThat(difference).isBetween(halfDigit, computed * ONE_PERCENT);
            default -> assertThat(difference).isLessThanOrEqualTo(halfDigit * (1 + 1e-9));
        }
    }

    private static double in(String unit, Pipe pipe) {
        return switch (unit) {
            case "US gal/ft" -> pipe.gallonsPerFoot();
            case "US gal/100 ft" -> pipe.gallonsPerFoot() * 100;
            case "ft3/ft" -> Units.CUBIC_FOOT.numberOf(pipe.litresPerMetre() / 1000) / Units.FOOT.numberOf(1);
            default -> throw new AssertionError(unit);
        };
    }

    /** A trade journal of 2003, US gal per foot: its copper is type M and its PEX is by the minimum wall. */
    @ParameterizedTest
    @CsvSource({
        "ASTM B88 type M, 1/2, 0.01319",
        "ASTM B88 type M, 3/4, 0.02685",
        "ASTM B88 type M, 1, 0.0454",
        "ASTM B88 type M, 1-1/4, 0.06804",
        "ASTM B88 type M, 1-1/2, 0.09505",
        "ASTM B88 type M, 2, 0.1647",
        "ASTM B88 type M, 2-1/2, 0.2543",
        "ASTM B88 type M, 3, 0.3630",
        "ASTM F876 minimum wall, 1/2, 0.009609",
        "ASTM F876 minimum wall, 3/4, 0.01894",
        "ASTM F876 minimum wall, 1, 0.03128",
        "ASTM F876 minimum wall, 1-1/4, 0.04668",
        "ASTM F876 minimum wall, 2, 0.1116",
        "ASTM F1281, 3/4, 0.02654",
        "ASTM F1281, 1, 0.04351",
    })
    void agreesWithATradeJournal(String standard, String size, double gallonsPerFoot) {
        assertThat(PipeStandard.named(standard).size(size).pipe().gallonsPerFoot())
                .isCloseTo(gallonsPerFoot, within(gallonsPerFoot * 0.003));
    }

    /** The same journal for 1/2 in PEX-AL-PEX: a bore of 12.8 mm, where the standard as remembered gives 12.7 mm. */
    @Test
    void smallCompositePipeIsLowerThanInTheTradeJournal() {
        assertThat(PipeStandard.ASTM_F1281.size("1/2").pipe().gallonsPerFoot()).isCloseTo(0.01038, within(0.000185));
    }

    /** Contents in gallons per foot are 0.0408 times the bore in inches squared. */
    @Test
    void theRuleOfTheTrade() {
        PipeStandard.ASTM_B88_K
                .sizes()
                .forEach(size -> assertThat(size.pipe().gallonsPerFoot()
                                / Math.pow(size.bore().in(Units.INCH), 2))
                        .isCloseTo(0.0408, within(0.00001)));
    }
}
