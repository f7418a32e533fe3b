package org.ullage.published;

import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.method.ExpansionRule;
import org.ullage.method.ThermalStates;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The expansion coefficient of UNE 100155 for water with glycol: C_e f with f = a (1.8 t + 32)^b, a = -0.0134 (G^2 - 143.8 G + 1918.2)
 * and b = 0.00035 (G^2 - 94.57 G + 500), G the glycol in percent by volume. Remembered and not confirmed; a method that uses the
 * mixture's density is the better choice. Immutable.
 *
 * <pre>{@code Method house = Methods.UNE_100155.with(new UneGlycolExpansion(VolumeFraction.percent(30)));}</pre>
 *
 * @param glycol share of glycol by volume
 */
public record UneGlycolExpansion(VolumeFraction glycol) implements ExpansionRule {

    private static final Source MEMORY = Source.fromMemory("UNE 100155:2004", "factor for water with glycol");

    private static final Constant A0 = new Constant("a_0", 1918.2, "1", MEMORY);
    private static final Constant A1 = new Constant("a_1", -143.8, "1", MEMORY);
    private static final Constant A = new Constant("a_f", -0.0134, "1", MEMORY);
    private static final Constant B0 = new Constant("b_0", 500, "1", MEMORY);
    private static final Constant B1 = new Constant("b_1", -94.57, "1", MEMORY);
    private static final Constant B = new Constant("b_f", 3.5e-4, "1", MEMORY);

    private static final VolumeFraction LEAST_GLYCOL =
            VolumeFraction.percent(new Constant("G_min", 20, "vol%", MEMORY).value());
    private static final VolumeFraction MOST_GLYCOL =
            VolumeFraction.percent(new Constant("G_max", 50, "vol%", MEMORY).value());
    private static final Temperature LOWEST = Temperature.celsius(new Constant("t_min", 65, "degC", MEMORY).value());
    private static final Temperature HIGHEST = Temperature.celsius(new Constant("t_max", 115, "degC", MEMORY).value());

    /**
     * Checks the share.
     *
     * @param glycol share of glycol by volume
     * @throws OutOfRangeException if it is not from 20 to 50 vol%
     */
    public UneGlycolExpansion {
        if (glycol.compareTo(LEAST_GLYCOL) < 0 || glycol.compareTo(MOST_GLYCOL) > 0) {
            throw new OutOfRangeException(
                    "share of glycol",
                    glycol.text(Units.VOLUME_PERCENT),
                    "from " + LEAST_GLYCOL.text(Units.VOLUME_PERCENT) + " to " + MOST_GLYCOL.text(Units.VOLUME_PERCENT)
                            + " for the factor of UNE 100155",
                    "take a method that uses the fluid's density");
        }
    }

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return factor(states.hot()) * Une100155Method.EXPANSION.fraction(fluid, states);
    }

    /**
     * The factor on the coefficient of water.
     *
     * @param hot highest temperature, from 65 to 115 degC
     * @return the factor, above 1
     * @throws OutOfRangeException if the temperature is outside that range
     */
    public double factor(Temperature hot) {
        if (hot.compareTo(LOWEST) < 0 || hot.compareTo(HIGHEST) > 0) {
            throw new OutOfRangeException(
                    "highest temperature",
                    hot.textInBothSystems(),
                    "from " + LOWEST.textInBothSystems() + " to " + HIGHEST.textInBothSystems()
                            + " for the glycol factor of UNE 100155",
                    "take a method that uses the fluid's density");
        }
        double percent = glycol.in(Units.VOLUME_PERCENT);
        double a = A.value() * (percent * (percent + A1.value()) + A0.value());
        double b = B.value() * (percent * (percent + B1.value()) + B0.value());
        return a * Math.pow(hot.in(Units.FAHRENHEIT), b);
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return false;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        double factor = factor(states.hot());
        List<Step> steps = new ArrayList<>(Une100155Method.EXPANSION.steps(fluid, states, fraction / factor));
        Term water = steps.get(steps.size() - 1).result();
        Term glycolFactor = Term.number("f", factor);
        steps.add(Step.given("factor for " + this, glycolFactor, "a (1.8 t + 32)^b of share and temperature", MEMORY));
        steps.add(new Step(
                "expansion with glycol, as a share of the contents",
                water.symbol() + " * f",
                List.of(water, glycolFactor),
                Term.number("e_g", fraction),
                MEMORY));
        return steps;
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        List<Caution> warnings = new ArrayList<>();
        warnings.add(new Caution("The glycol factor of UNE 100155 is remembered and was not confirmed.", MEMORY));
        if (fluid.isWater()) {
            warnings.add(new Caution("The glycol factor was counted although the loop holds water.", MEMORY));
        }
        return warnings;
    }

    @Override
    public Source source() {
        return MEMORY;
    }

    /**
     * The convention in words.
     *
     * @return such as {@code UNE 100155 with 30 vol% glycol}
     */
    @Override
    public String toString() {
        return "UNE 100155 with " + glycol.text(Units.VOLUME_PERCENT) + " glycol";
    }
}
