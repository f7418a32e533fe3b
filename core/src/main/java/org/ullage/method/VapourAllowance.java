package org.ullage.method;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.StagnationContents;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.Volume;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * What a rule for solar loops counts as turned to vapour in stagnation: a share of the collectors' contents, with or without the pipes
 * at and above them. Immutable.
 *
 * @param collectorShare share of the collectors' contents
 * @param countsPipe whether the pipes that may boil empty count too
 */
public record VapourAllowance(Constant collectorShare, boolean countsPipe) implements Serializable {

    /** A rule for loops that never boil. */
    public static final VapourAllowance NONE =
            new VapourAllowance(new Constant("f_c", 0, "1", Source.commonPractice("a loop that does not boil")), false);

    /** Whether the rule is made for loops that boil. */
    boolean isForBoilingLoops() {
        return collectorShare.value() != 0 || countsPipe;
    }

    /**
     * The volume that turns to vapour on bare SI numbers.
     *
     * @param contents what may boil, or null if it was not given
     * @param neededBy the method's title
     * @return m3, zero if the rule counts no vapour
     * @throws MissingInputException if the rule needs the contents and they were not given
     */
    double cubicMetres(@Nullable StagnationContents contents, String neededBy) {
        if (!isForBoilingLoops()) {
            return 0;
        }
        if (contents == null) {
            throw new MissingInputException(
                    "contents of the collectors", neededBy, "give what collectors and pipes above them hold");
        }
        double pipe = countsPipe ? contents.pipe().si() : 0;
        return collectorShare.value() * contents.collectors().si() + pipe;
    }

    Step step(StagnationContents contents, Volume vapour) {
        List<Term> terms = new ArrayList<>(List.of(Term.of(collectorShare), Term.of("V_c", contents.collectors())));
        if (countsPipe) {
            terms.add(Term.of("V_p", contents.pipe()));
        }
        return new Step(
                "liquid pushed out by vapour in stagnation",
                countsPipe ? "f_c * V_c + V_p" : "f_c * V_c",
                terms,
                Term.of("V_vap", vapour),
                collectorShare.source());
    }

    /**
     * The rule in words.
     *
     * @return such as {@code 1.1 x the collectors}
     */
    @Override
    public String toString() {
        if (!isForBoilingLoops()) {
            return "none";
        }
        return collectorShare.text() + " x the collectors" + (countsPipe ? " and the pipes that may boil empty" : "");
    }
}
