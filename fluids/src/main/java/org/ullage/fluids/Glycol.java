package org.ullage.fluids;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;
import org.ullage.workings.Caution;

/**
 * The two antifreezes of hydronic loops, and all that is published about them here. {@link PropyleneGlycol} and
 * {@link EthyleneGlycol} are shorter ways to the same.
 */
public enum Glycol {
    /** Propylene glycol, 1,2-propanediol. */
    PROPYLENE("propylene glycol"),

    /** Ethylene glycol, 1,2-ethanediol. */
    ETHYLENE("ethylene glycol");

    private final String text;

    Glycol(String text) {
        this.text = text;
    }

    /**
     * The name in words.
     *
     * @return such as {@code propylene glycol}
     */
    public String text() {
        return text;
    }

    /**
     * The mixture by the model that is on the safe side at this concentration, see {@link #defaultModel(VolumeFraction)}.
     *
     * @param volume glycol by volume, 0 to 57.8 % (ethylene) or 60 % (propylene)
     * @return the fluid
     * @throws OutOfRangeException if the default model does not reach that concentration
     */
    public GlycolSolution of(VolumeFraction volume) {
        return of(Concentration.of(this, volume));
    }

    /**
     * The mixture by the default model, as {@link #of(VolumeFraction)}.
     *
     * @param mass glycol by mass, 0 to 60 %
     * @return the fluid
     * @throws OutOfRangeException if the default model does not reach that concentration
     */
    public GlycolSolution of(MassFraction mass) {
        return of(Concentration.of(this, mass));
    }

    private GlycolSolution of(Concentration concentration) {
        return new GlycolSolution(this, defaultModel(concentration.volume()), concentration);
    }

    /**
     * The model taken where none is named. The published models disagree, and for a vessel the larger expansion is the safe
     * one, so it is the larger of the two that are tabulated or fitted for heat-transfer fluids, ASHRAE and Melinder:
     *
     * <ul>
     *   <li><b>Melinder 2010</b> from 18 vol% (ethylene) or 27 vol% (propylene) up, so wherever a loop is filled as producers
     *       advise (25 to 60 vol%) or nearly so. From 4.4 to 93.3 degC it gives at 30, 40 and 50 vol% 5.04, 5.35 and 5.58 % for
     *       ethylene glycol, where ASHRAE gives 4.56, 4.77 and 4.98 %: a vessel by ASHRAE takes in up to 12 % less. ASHRAE even
     *       falls below ideal mixing there (10 to 60 degC, 50 vol%: 2.42 against 2.48 %), which in principle no mixture does.
     *       For propylene glycol it gives 5.35, 6.00 and 6.51 %, ASHRAE 5.37, 5.81 and 6.21 %.
     *   <li><b>ASHRAE</b> from 10 vol% up to there. In dilute mixtures Melinder's polynomial falls short instead: 4.06 against
     *       4.36 % for 10 vol% of propylene glycol, below ideal mixing (4.17 %). Where the model changes, neither falls short of
     *       the other by more than 4.1 % (ethylene) or 2.2 % (propylene) of the expansion over any span looked at.
     *   <li><b>Ideal mixing</b> below 10 vol%, where ASHRAE has no rows: it meets pure water, as Melinder's polynomial does not,
     *       and gives more than it (5 vol% of ethylene glycol: 3.95 against 3.84 %).
     * </ul>
     *
     * <p>Conde 2011 is never the default: its densities lie up to 1.7 % off measured ones, and its expansion is below that of
     * pure water for dilute ethylene glycol, yet for propylene glycol half a point above the two that agree with each other.
     * Melinder ends at 100 degC; hotter loops must name a model (ASHRAE reaches 125 degC) and so see the choice.
     *
     * @param volume glycol by volume
     * @return the model
     */
    public GlycolModel defaultModel(VolumeFraction volume) {
        return DefaultGlycolModel.at(this, volume);
    }

    /**
     * The mixture by a named model.
     *
     * @param model the model
     * @param volume glycol by volume; converted by {@link GlycolSolution#definition()} where the model wants mass
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public GlycolSolution by(GlycolModel model, VolumeFraction volume) {
        return new GlycolSolution(this, model, Concentration.of(this, volume));
    }

    /**
     * The mixture by a named model.
     *
     * @param model the model
     * @param mass glycol by mass; converted by {@link GlycolSolution#definition()} where the model wants volume
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public GlycolSolution by(GlycolModel model, MassFraction mass) {
        return new GlycolSolution(this, model, Concentration.of(this, mass));
    }

    /**
     * The mixture by every model that reaches the concentration; the uncorrected ASHRAE table is left out.
     *
     * @param volume glycol by volume
     * @return in the order of {@link GlycolModel}, never empty
     */
    public List<GlycolSolution> models(VolumeFraction volume) {
        return models(Concentration.of(this, volume));
    }

    /**
     * The mixture by every model that reaches the concentration; the uncorrected ASHRAE table is left out.
     *
     * @param mass glycol by mass
     * @return in the order of {@link GlycolModel}, never empty
     */
    public List<GlycolSolution> models(MassFraction mass) {
        return models(Concentration.of(this, mass));
    }

    private List<GlycolSolution> models(Concentration concentration) {
        return compared()
                .map(model -> attempt(() -> new GlycolSolution(this, model, concentration)))
                .flatMap(Optional::stream)
                .toList();
    }

    static Stream<GlycolModel> compared() {
        return Arrays.stream(GlycolModel.values()).filter(model -> model != GlycolModel.ASHRAE_AS_PRINTED);
    }

    private static <T> Optional<T> attempt(Supplier<T> step) {
        try {
            return Optional.of(step.get());
        } catch (OutOfRangeException refused) {
            return Optional.empty();
        }
    }

    /**
     * The mixture by the default model that just protects to a temperature.
     *
     * @param freezingPoint the wanted freezing point
     * @return the fluid; its freezing point is at or below the wanted one
     * @throws OutOfRangeException if no concentration freezes there
     */
    public GlycolSolution protectingTo(Temperature freezingPoint) {
        return of(freezing().massFractionFor(freezingPoint));
    }

    /**
     * Percent by volume as percent by mass.
     *
     * @param volume glycol by volume
     * @param definition what that percent by volume means
     * @return glycol by mass
     * @throws OutOfRangeException if the definition does not reach that concentration
     */
    public MassFraction massFraction(VolumeFraction volume, ConcentrationDefinition definition) {
        return new ConcentrationConversion(this).mass(volume, definition);
    }

    /**
     * Percent by mass as percent by volume.
     *
     * @param mass glycol by mass
     * @param definition what the percent by volume shall mean
     * @return glycol by volume
     * @throws OutOfRangeException if the definition does not reach that concentration
     */
    public VolumeFraction volumeFraction(MassFraction mass, ConcentrationDefinition definition) {
        return new ConcentrationConversion(this).volume(mass, definition);
    }

    /**
     * The freezing points of one published source, and their inverse.
     *
     * @param model which source
     * @return the curve
     */
    public FreezingCurve freezing(FreezingModel model) {
        return new FreezingCurve(this, model);
    }

    /**
     * The freezing points on the safe side, and their inverse: the warmer of the two published sources at each concentration.
     *
     * @return the curve
     */
    public FreezingCurve freezing() {
        return freezing(FreezingModel.WARMER);
    }

    /**
     * Published upper temperatures, lowest first. The data sheet of the product in the loop overrides them all.
     *
     * @return the limits with their meaning and source
     */
    public List<TemperatureLimit> temperatureLimits() {
        return GlycolLimits.of(this);
    }

    /**
     * The temperature above which degradation of the fluid rises: 250 degF, 121 degC, bulk. The data sheet of the product in
     * the loop overrides it.
     *
     * @return the limit with its source
     */
    public TemperatureLimit maximumRecommendedTemperature() {
        return GlycolLimits.DEGRADATION;
    }

    /**
     * What to say about a temperature with regard to the fluid's life.
     *
     * @param temperature highest bulk temperature of the fluid
     * @return a caution if it is above {@link #maximumRecommendedTemperature()}
     */
    public Optional<Caution> degradationCaution(Temperature temperature) {
        return GlycolLimits.caution(this, temperature);
    }

    /**
     * The cells of this glycol's ASHRAE density table that are not used as they were found.
     *
     * @return the corrections, with reason
     */
    public List<TableCorrection> tableCorrections() {
        return GlycolCorrections.of(this);
    }
}
