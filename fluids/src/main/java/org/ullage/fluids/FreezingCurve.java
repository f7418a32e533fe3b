package org.ullage.fluids;

import java.io.Serializable;
import java.util.function.DoubleUnaryOperator;
import org.ullage.provenance.Source;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/**
 * Freezing point of one glycol in water against concentration, and the concentration for a wanted freezing point, by one
 * published source or the safe side of both. From 0 to 60 percent by mass. A percent by volume is taken by ASHRAE's pairing, which reaches to 57.8 vol%
 * of ethylene and 60 vol% of propylene glycol. Get one from {@link Glycol#freezing()} or {@link Glycol#freezing(FreezingModel)}. Immutable.
 *
 * <p>The freezing point is where the first ice appears; it is not the point where pipes burst.
 */
public final class FreezingCurve implements Serializable {

    private static final long serialVersionUID = 1L;

    /** Both sources end here, percent by mass. */
    private static final double MOST_PERCENT = MelinderPolynomial.MOST_PERCENT;

    private final Glycol glycol;
    private final FreezingModel model;
    private final transient DoubleUnaryOperator celsiusByMassPercent;

    FreezingCurve(Glycol glycol, FreezingModel model) {
        GlycolData data = GlycolData.of(glycol);
        this.glycol = glycol;
        this.model = model;
        this.celsiusByMassPercent = switch (model) {
            case ASHRAE -> data.pairing()::freezing;
            case MELINDER -> data.melinder()::freezing;
            case WARMER ->
                percent -> Math.max(
                        data.pairing().freezing(percent), data.melinder().freezing(percent));
        };
    }

    /** Read back, a curve takes its numbers from the published tables again. */
    private Object readResolve() {
        return new FreezingCurve(glycol, model);
    }

    /**
     * Which of the published sets this is.
     *
     * @return the model
     */
    public FreezingModel model() {
        return model;
    }

    /**
     * Where the freezing points come from.
     *
     * @return the source
     */
    public Source source() {
        return model.source();
    }

    /**
     * The freezing point of the strongest mixture covered.
     *
     * @return the freezing point at 60 mass%
     */
    public Temperature coldest() {
        return Temperature.celsius(celsiusByMassPercent.applyAsDouble(MOST_PERCENT));
    }

    /**
     * The freezing point of a mixture.
     *
     * @param mass glycol by mass, 0 to 60 %
     * @return the temperature at which the first ice appears
     * @throws OutOfRangeException if the concentration is above 60 mass%
     */
    public Temperature pointAt(MassFraction mass) {
        return Temperature.celsius(celsius(mass));
    }

    /**
     * The freezing point of a mixture.
     *
     * @param volume glycol by volume, 0 to 57.8 % (ethylene) or 60 % (propylene), taken by ASHRAE's pairing
     * @return the temperature at which the first ice appears
     * @throws OutOfRangeException if the concentration is above the pairing's end
     */
    public Temperature pointAt(VolumeFraction volume) {
        return pointAt(glycol.massFraction(volume, ConcentrationDefinition.ASHRAE_PAIRING));
    }

    /**
     * The weakest mixture that is still free of ice at a temperature.
     *
     * @param freezingPoint wanted freezing point, from {@link #coldest()} to 0 degC
     * @return glycol by mass
     * @throws OutOfRangeException if no mixture covered freezes there
     */
    public MassFraction massFractionFor(Temperature freezingPoint) {
        double wanted = Celsius.of(freezingPoint);
        double coldest = celsiusByMassPercent.applyAsDouble(MOST_PERCENT);
        if (!Celsius.isWithin(wanted, coldest, 0)) {
            throw new OutOfRangeException(
                    "freezing point of " + glycol.text(),
                    freezingPoint.text(Units.CELSIUS),
                    coldest().text(Units.CELSIUS, 4) + " (60 mass%) to 0 degC by " + model.words(),
                    "above 0 degC water alone does; below, no mixture of this source protects");
        }
        return MassFraction.percent(percentFor(wanted, coldest));
    }

    /**
     * The weakest mixture that is still free of ice at a temperature.
     *
     * @param freezingPoint wanted freezing point, from {@link #coldest()} to 0 degC
     * @return glycol by volume, by ASHRAE's pairing
     * @throws OutOfRangeException if no mixture covered freezes there
     */
    public VolumeFraction volumeFractionFor(Temperature freezingPoint) {
        return glycol.volumeFraction(massFractionFor(freezingPoint), ConcentrationDefinition.ASHRAE_PAIRING);
    }

    private double celsius(MassFraction mass) {
        double percent = mass.in(Units.MASS_PERCENT);
        if (percent > MOST_PERCENT) {
            throw new OutOfRangeException(
                    "mass fraction of " + glycol.text(),
                    mass.text(Units.MASS_PERCENT),
                    "0 to " + MOST_PERCENT + " mass% for a freezing point by " + model.words(),
                    "give a weaker mixture");
        }
        return celsiusByMassPercent.applyAsDouble(percent);
    }

    private double percentFor(double wanted, double coldest) {
        // the polynomial's own value for water is not exactly 0 degC
        if (wanted >= celsiusByMassPercent.applyAsDouble(0)) {
            return 0;
        }
        if (wanted <= coldest) {
            return MOST_PERCENT;
        }
        return Root.of(percent -> celsiusByMassPercent.applyAsDouble(percent) - wanted, 0, MOST_PERCENT);
    }

    /**
     * The curve for people.
     *
     * @return such as {@code freezing point of propylene glycol by Melinder 2010}
     */
    @Override
    public String toString() {
        return "freezing point of " + glycol.text() + " by " + model.words();
    }
}
