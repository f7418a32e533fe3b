package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/** Does the arithmetic of a step again, as a reader with a pocket calculator would: from its formula and the values beside it. */
final class Redo {

    private static final Pattern TOKEN =
            Pattern.compile("\\s*([0-9.]+(?:e-?[0-9]+)?|\\p{L}[\\p{L}\\p{N}_]*|[-+*/^(),])");

    private final Step step;
    private final List<String> tokens = new ArrayList<>();
    private int next;

    private Redo(Step step) {
        this.step = step;
        Matcher matcher = TOKEN.matcher(step.formula());
        while (matcher.lookingAt()) {
            tokens.add(matcher.group(1));
            matcher.region(matcher.end(), step.formula().length());
        }
    }

    static double of(Step step) {
        Redo redo = new Redo(step);
        double value = redo.sum();
        if (redo.next != redo.tokens.size()) {
            throw new AssertionError("cannot be read to its end: " + step.formula());
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take("+")) {
                value += product();
            } else if (take("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take("*")) {
                value *= power();
            } else if (take("/")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double base = atom();
        return take("^") ? Math.pow(base, atom()) : base;
    }

    private double atom() {
        String token = tokens.get(next++);
        if (token.equals("(")) {
            return closed(sum());
        }
        if (token.equals("max") && take("(")) {
            double first = sum();
            take(",");
            return closed(Math.max(first, sum()));
        }
        if (token.equals("min") && take("(")) {
            double first = sum();
            take(",");
            return closed(Math.min(first, sum()));
        }
        return Character.isLetter(token.charAt(0)) ? value(token) : Double.parseDouble(token);
    }

    private double closed(double value) {
        if (!take(")")) {
            throw new AssertionError("a bracket is open in " + step.formula());
        }
        return value;
    }

    private boolean take(String token) {
        boolean there = next < tokens.size() && tokens.get(next).equals(token);
        if (there) {
            next++;
        }
        return there;
    }

    private double value(String symbol) {
        return step.terms().stream()
                .filter(term -> term.symbol().equals(symbol))
                .findFirst()
                .map(Redo::number)
                .orElseThrow(() -> new AssertionError(symbol + " has no value beside " + step.formula()));
    }

    /** The temperature of a fit counts in the fit's own unit, all else in SI. */
    private static double number(Term term) {
        String text = term.text(org.ullage.quantity.UnitSystem.SI);
        return term.symbol().equals("T") ? Double.parseDouble(text.substring(0, text.indexOf(' '))) : term.number();
    }
}
