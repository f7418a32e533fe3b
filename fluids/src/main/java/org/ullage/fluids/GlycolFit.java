package org.ullage.fluids;

import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.quantity.OutOfRangeException;

/**
 * One model at one concentration: everything that depends on concentration alone is worked out here, once. SI units.
 *
 * @param curve specific volume
 * @param lowestKelvins lowest temperature of the model
 * @param highestKelvins highest temperature of the model
 * @param freezing the freezing points that go with it
 */
record GlycolFit(DensityCurve curve, double lowestKelvins, double highestKelvins, FreezingModel freezing) {

    /** Lower end of the widely reprinted table made from M. Conde's equation, degC. */
    private static final double CONDE_LOWEST_CELSIUS = new Constant("t_min", -48, "degC", GlycolSources.CONDE).value();

    /** Upper end of the same table, degC. */
    private static final double CONDE_HIGHEST_CELSIUS = new Constant("t_max", 100, "degC", GlycolSources.CONDE).value();

    /** M. Conde's equation is reprinted up to here, percent by mass. */
    private static final double CONDE_MOST_PERCENT = new Constant("x_max", 60, "mass%", GlycolSources.CONDE).value();

    /** No published density of a glycol mixture above this temperature stands here to hold ideal mixing against, degC. */
    private static final double IDEAL_HIGHEST_CELSIUS =
            new Constant("t_max", 125, "degC", GlycolSources.IDEAL_RANGE).value();

    /** A NaN is not covered. */
    boolean covers(double kelvins) {
        return Celsius.isWithin(kelvins, lowestKelvins, highestKelvins);
    }

    static GlycolFit of(GlycolModel model, Glycol glycol, Concentration concentration) {
        GlycolData data = GlycolData.of(glycol);
        return switch (model) {
            case ASHRAE -> ashrae(data.ashrae(), glycol, concentration);
            case ASHRAE_AS_PRINTED -> ashrae(data.ashraeAsPrinted(), glycol, concentration);
            case MELINDER -> melinder(data.melinder(), glycol, concentration);
            case CONDE -> conde(data, glycol, concentration);
            case IDEAL_MIXING -> idealMixing(data.pure(), concentration);
        };
    }

    private static GlycolFit ashrae(DensitySurface surface, Glycol glycol, Concentration concentration) {
        double percent = concentration.volumePercent();
        if (!(percent >= surface.least() && percent <= surface.most())) {
            throw new OutOfRangeException(
                    "volume fraction of " + glycol.text(),
                    concentration.asVolume(),
                    surface.least() + " to " + surface.most() + " vol% in the ASHRAE table",
                    "another model may cover it: /melinder, /conde or /ideal");
        }
        PiecewiseCubic density = surface.at(percent);
        return new GlycolFit(
                (kelvins, pascals) -> 1 / density.value(kelvins - Celsius.ZERO),
                density.first() + Celsius.ZERO,
                density.last() + Celsius.ZERO,
                FreezingModel.ASHRAE);
    }

    private static GlycolFit melinder(MelinderPolynomial polynomial, Glycol glycol, Concentration concentration) {
        double percent = concentration.massPercent();
        requireMass(percent, MelinderPolynomial.MOST_PERCENT, GlycolModel.MELINDER, glycol, concentration);
        return new GlycolFit(
                polynomial.at(percent),
                polynomial.freezing(percent) + Celsius.ZERO,
                MelinderPolynomial.HIGHEST_CELSIUS + Celsius.ZERO,
                FreezingModel.MELINDER);
    }

    private static GlycolFit conde(GlycolData data, Glycol glycol, Concentration concentration) {
        double percent = concentration.massPercent();
        requireMass(percent, CONDE_MOST_PERCENT, GlycolModel.CONDE, glycol, concentration);
        return new GlycolFit(
                condeCurve(data.conde(), percent / 100),
                Math.max(data.melinder().freezing(percent), CONDE_LOWEST_CELSIUS) + Celsius.ZERO,
                CONDE_HIGHEST_CELSIUS + Celsius.ZERO,
                FreezingModel.MELINDER);
    }

    private static DensityCurve condeCurve(double[] a, double z) {
        double constant = a[0] + a[1] * z;
        double linear = a[2] + a[3] * z;
        double square = a[4];
        return (kelvins, pascals) -> {
            double u = Celsius.ZERO / kelvins;
            return 1 / (constant + u * (linear + u * square));
        };
    }

    private static GlycolFit idealMixing(PureGlycol pure, Concentration concentration) {
        double glycolPart = concentration.mass().si();
        LoopFluid water = Water.IAPWS_IF97;
        return new GlycolFit(
                (kelvins, pascals) -> glycolPart / pure.density(kelvins)
                        + (1 - glycolPart) * water.specificVolumeSi(Math.max(kelvins, Celsius.ZERO), pascals),
                Celsius.ZERO,
                IDEAL_HIGHEST_CELSIUS + Celsius.ZERO,
                FreezingModel.MELINDER);
    }

    private static void requireMass(
            double percent, double most, GlycolModel model, Glycol glycol, Concentration concentration) {
        if (percent > most) {
            throw new OutOfRangeException(
                    "mass fraction of " + glycol.text(),
                    concentration.asMass(),
                    "0 to " + most + " mass% for " + model.title(),
                    "another model may cover it: /ashrae or /ideal");
        }
    }
}
