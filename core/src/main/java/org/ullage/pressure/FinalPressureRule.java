package org.ullage.pressure;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * How a method finds the highest pressure at the vessel from the gauge setting of the relief valve: the lower of a share of the
 * setting and the setting less a margin. A rule that is a table has one fixed pressure instead. Immutable.
 *
 * @param share share of the gauge setting, above 0 and at most 1
 * @param margin pressure to stay below the setting, zero or more
 * @param fixed the one gauge pressure the rule was made for, or null if it follows the setting
 * @param source where the rule comes from
 */
public record FinalPressureRule(
        double share, PressureDifference margin, @Nullable GaugePressure fixed, Source source) implements Serializable {

    private static final PressureDifference NO_MARGIN = PressureDifference.bar(0);

    /**
     * Checks share and margin.
     *
     * @param share share of the gauge setting
     * @param margin pressure to stay below the setting
     * @param fixed the one gauge pressure the rule was made for, or null
     * @param source where the rule comes from
     * @throws OutOfRangeException if the share is not above 0 and at most 1, or the margin is negative
     */
    public FinalPressureRule {
        if (!(share > 0 && share <= 1)) {
            throw new OutOfRangeException(
                    "share of the relief setting",
                    String.valueOf(share),
                    "above 0 and at most 1",
                    "write 0.9 for 90 %");
        }
        if (margin.si() < 0) {
            throw new OutOfRangeException(
                    "margin below the relief setting",
                    margin.text(Units.BAR),
                    "zero or more",
                    "the vessel must not be allowed more than the setting");
        }
    }

    /**
     * The lower of a share of the setting and the setting less a margin.
     *
     * @param share share of the gauge setting, above 0 and at most 1
     * @param margin pressure to stay below the setting, zero or more
     * @param source where the rule comes from
     * @throws OutOfRangeException if the share is not above 0 and at most 1, or the margin is negative
     */
    public FinalPressureRule(double share, PressureDifference margin, Source source) {
        this(share, margin, null, source);
    }

    /**
     * One pressure whatever the setting, as in a table that was made for it.
     *
     * @param pressure gauge pressure at the vessel, hot
     * @param source where the rule comes from
     * @return the rule
     */
    public static FinalPressureRule fixed(GaugePressure pressure, Source source) {
        return new FinalPressureRule(1, NO_MARGIN, pressure, source);
    }

    /**
     * The setting itself.
     *
     * @param source where the rule comes from
     * @return the rule
     */
    public static FinalPressureRule setting(Source source) {
        return new FinalPressureRule(1, NO_MARGIN, source);
    }

    /**
     * A share of the setting.
     *
     * @param share above 0 and at most 1
     * @param source where the rule comes from
     * @return the rule
     */
    public static FinalPressureRule shareOfSetting(double share, Source source) {
        return new FinalPressureRule(share, NO_MARGIN, source);
    }

    /**
     * A margin below the setting.
     *
     * @param margin zero or more
     * @param source where the rule comes from
     * @return the rule
     */
    public static FinalPressureRule below(PressureDifference margin, Source source) {
        return new FinalPressureRule(1, margin, source);
    }

    /**
     * The final pressure at the vessel on bare SI numbers.
     *
     * @param settingPascals gauge setting of the relief valve
     * @param ambientPascals absolute pressure of the air
     * @return absolute pascals
     */
    public double pascals(double settingPascals, double ambientPascals) {
        if (fixed != null) {
            return fixed.si() + ambientPascals;
        }
        return Math.min(share * settingPascals, settingPascals - margin.si()) + ambientPascals;
    }

    /**
     * The step of a rule with one fixed pressure.
     *
     * @param pressure the fixed pressure
     * @param ambient pressure of the air
     * @param result symbol and value of the result of {@link #pascals}
     * @return the step
     */
    public Step fixedStep(GaugePressure pressure, AbsolutePressure ambient, Term result) {
        return new Step(
                "final pressure at the vessel, the one the rule was made for",
                "p_fix + p_a",
                List.of(Term.of("p_fix", pressure), Term.of("p_a", ambient)),
                result,
                source);
    }

    /**
     * The step of a rule that follows the setting.
     *
     * @param setting gauge setting of the relief valve
     * @param ambient pressure of the air
     * @param result symbol and value of the result of {@link #pascals}
     * @return the step
     */
    public Step step(GaugePressure setting, AbsolutePressure ambient, Term result) {
        return new Step(
                "final pressure by the relief setting",
                "min(share * p_set, p_set - d_set) + p_a",
                List.of(
                        Term.number("share", share),
                        Term.of("p_set", setting),
                        Term.of("d_set", margin),
                        Term.of("p_a", ambient)),
                result,
                source);
    }

    /**
     * The rule in words.
     *
     * @return such as {@code relief setting - 0.5 bar}
     */
    @Override
    public String toString() {
        if (fixed != null) {
            return fixed.text(Units.PSI, 4) + " (" + fixed.text(Units.BAR, 4) + ")";
        }
        String byMargin = margin.si() == 0 ? "relief setting" : "relief setting - " + margin.text(Units.BAR);
        if (share == 1) {
            return byMargin;
        }
        String byShare = share + " x relief setting";
        return margin.si() == 0 ? byShare : "the lower of " + byMargin + " and " + byShare;
    }
}
