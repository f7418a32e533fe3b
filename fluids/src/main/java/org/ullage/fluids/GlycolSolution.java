package org.ullage.fluids;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;

/**
 * Propylene or ethylene glycol in water at one concentration, as one model describes it. What depends on concentration is worked
 * out once, when it is made; a look-up is then a polynomial in temperature and allocates nothing. Immutable.
 *
 * <p>No model but ideal mixing depends on pressure; the others ignore it. The vapour pressure is that of pure water, which no
 * mixture reaches, so that an anti-flash margin is on the safe side; {@link #raoult()} estimates the mixture's own.
 *
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // the serial tag belongs on a class, whatever the check says
public final class GlycolSolution implements LoopFluid, StatedUncertainty {

    private static final long serialVersionUID = 1L;

    private final Glycol glycol;
    private final GlycolModel model;
    private final Concentration concentration;
    private final transient GlycolFit fit;

    GlycolSolution(Glycol glycol, GlycolModel model, Concentration concentration) {
        this.glycol = glycol;
        this.model = model;
        this.concentration = concentration;
        this.fit = GlycolFit.of(model, glycol, concentration);
    }

    /**
     * Which glycol it is.
     *
     * @return propylene or ethylene glycol
     */
    public Glycol glycol() {
        return glycol;
    }

    /**
     * Which density model describes it.
     *
     * @return the model
     */
    public GlycolModel densityModel() {
        return model;
    }

    /**
     * The glycol and its concentration, as it was given.
     *
     * @return such as {@code propylene glycol 30 vol%}
     */
    @Override
    public String name() {
        return glycol.text() + " " + concentration.text();
    }

    /**
     * The model, the concentration it works with, and the definition where that had to be converted.
     *
     * @return such as {@code Melinder 2010 at 30.6 mass% by ASHRAE's pairing}
     */
    @Override
    public String model() {
        return model.title() + " at " + (model.isByVolume() ? concentration.asVolume() : concentration.asMass());
    }

    /**
     * The fluid as {@link Fluids#parse(String)} reads it, model included.
     *
     * @return such as {@code propylene glycol 30 vol%/melinder}
     */
    public String text() {
        return name() + "/" + model.id();
    }

    @Override
    public Source source() {
        return model.source();
    }

    @Override
    public boolean isWater() {
        return false;
    }

    @Override
    public Temperature lowest() {
        return Temperature.ofSi(fit.lowestKelvins());
    }

    @Override
    public Temperature highest() {
        return Temperature.ofSi(fit.highestKelvins());
    }

    /**
     * The concentration by volume: as given, or converted by {@link #definition()}.
     *
     * @return glycol by volume
     */
    public VolumeFraction volumeFraction() {
        return concentration.volume();
    }

    /**
     * The concentration by mass: as given, or converted by {@link #definition()}.
     *
     * @return glycol by mass
     */
    public MassFraction massFraction() {
        return concentration.mass();
    }

    /**
     * What links both fractions: ASHRAE's pairing as far as it reaches, ideal volumes at 20 degC beyond.
     *
     * @return the definition
     */
    public ConcentrationDefinition definition() {
        return concentration.definition();
    }

    /**
     * The freezing point by ASHRAE's table with ASHRAE's densities, by Melinder's polynomial with the others. {@link
     * Glycol#freezing()} gives the warmer of the two.
     *
     * @return where the first ice appears
     * @throws OutOfRangeException if the concentration is above 60 mass%, where neither source reaches
     */
    public Temperature freezingPoint() {
        return glycol.freezing(fit.freezing()).pointAt(concentration.mass());
    }

    /**
     * Where {@link #freezingPoint()} comes from.
     *
     * @return the source
     */
    public Source freezingSource() {
        return fit.freezing().source();
    }

    /**
     * The cells of the density table that were corrected and bear on this mixture.
     *
     * @return the corrections, mostly none
     */
    public List<TableCorrection> corrections() {
        return model == GlycolModel.ASHRAE ? GlycolCorrections.near(glycol, concentration.volumePercent()) : List.of();
    }

    /**
     * The mixture's own vapour pressure and boiling point, estimated.
     *
     * @return the estimate by Raoult's law
     */
    public RaoultEstimate raoult() {
        return new RaoultEstimate(glycol, concentration.mass());
    }

    /** The same mixture, stated the same way, by another model. */
    GlycolSolution by(GlycolModel other) {
        return new GlycolSolution(glycol, other, concentration);
    }

    @Override
    public Optional<Constant> densityUncertainty() {
        return model.statedUncertainty();
    }

    @Override
    public String remark() {
        return model.remark();
    }

    /** Only the water in ideal mixing has a pressure dependence in print. */
    @Override
    public boolean isCompressible() {
        return model == GlycolModel.IDEAL_MIXING;
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        return fit.curve().specificVolume(kelvins, pascals);
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        requireInRange(kelvins);
        return WaterVapour.pressure(kelvins);
    }

    @Override
    public boolean isLiquidSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        return WaterVapour.isBelow(kelvins, pascals);
    }

    @Override
    public Source vapourPressureSource() {
        return WaterVapour.SOURCE;
    }

    /** Only what was asked for is written; the fit is made anew on reading. */
    private Object writeReplace() {
        return new GlycolSolutionForm(glycol, model, concentration);
    }

    private void readObject(ObjectInputStream stream) throws InvalidObjectException {
        throw new InvalidObjectException("a GlycolSolution is written as what it was made from");
    }

    private void requireInRange(double kelvins) {
        if (!fit.covers(kelvins)) {
            throw GlycolRefusal.of(this, fit.freezing(), kelvins);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GlycolSolution that
                && glycol == that.glycol
                && model == that.model
                && concentration.equals(that.concentration);
    }

    @Override
    public int hashCode() {
        return Objects.hash(glycol, model, concentration);
    }

    /**
     * The fluid and its model.
     *
     * @return such as {@code propylene glycol 30 vol% (Melinder 2010 at 30.6 mass% by ASHRAE's pairing)}
     */
    @Override
    public String toString() {
        return name() + " (" + model() + ")";
    }
}
