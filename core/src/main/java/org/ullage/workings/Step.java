package org.ullage.workings;

import java.io.Serializable;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;

/**
 * One step of a calculation. Immutable.
 *
 * @param meaning what the result is, in words
 * @param formula the right-hand side in symbols, or words where the value was given
 * @param terms the symbols of the formula with their values
 * @param result the symbol and value that come out
 * @param source where the formula or the value comes from
 */
public record Step(String meaning, String formula, List<Term> terms, Term result, Source source)
        implements Serializable {

    /** A letter right after a digit or a point belongs to a number such as {@code 3.9e-4}. */
    private static final Pattern SYMBOL = Pattern.compile("(?<![\\p{L}\\p{N}_.])\\p{L}[\\p{L}\\p{N}_]*");

    /**
     * Copies the terms.
     *
     * @param meaning what the result is
     * @param formula the right-hand side in symbols
     * @param terms the symbols with their values
     * @param result the outcome
     * @param source where the formula comes from
     */
    public Step {
        terms = List.copyOf(terms);
    }

    /**
     * A step that only states a value that was given.
     *
     * @param meaning what it is
     * @param given the symbol and value
     * @param how how it came, such as {@code given}
     * @param source who or what gave it
     * @return the step
     */
    public static Step given(String meaning, Term given, String how, Source source) {
        return new Step(meaning, how, List.of(), given, source);
    }

    /**
     * The formula with every symbol that has a value replaced by it. It is made from the formula, so the two cannot disagree.
     *
     * @param system metric or inch-pound
     * @return such as {@code 26.2 L / (1 - 2.27 bar abs / 3.71 bar abs)}
     */
    public String substituted(UnitSystem system) {
        return SYMBOL.matcher(formula).replaceAll(found -> Matcher.quoteReplacement(valueOf(found, system)));
    }

    private String valueOf(MatchResult found, UnitSystem system) {
        return terms.stream()
                .filter(term -> term.symbol().equals(found.group()))
                .findFirst()
                .map(term -> inPlace(term.text(system), found))
                .orElse(found.group());
    }

    /** Brackets a value that would read wrongly where it stands: a negative one, or one with a unit before a power. */
    private String inPlace(String value, MatchResult symbol) {
        boolean negative = value.startsWith("-") && !symbol.group().equals(formula);
        boolean raised = formula.startsWith("^", symbol.end()) && value.contains(" ");
        return negative || raised ? "(" + value + ")" : value;
    }
}
