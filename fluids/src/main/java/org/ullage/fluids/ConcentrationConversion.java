package org.ullage.fluids;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.ullage.provenance.Constant;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/** Percent by volume to percent by mass and back, for one glycol. */
final class ConcentrationConversion {

    private static final double REFERENCE_CELSIUS =
            new Constant("t", 20, "degC", GlycolSources.IDEAL_DEFINITION).value();
    private static final double REFERENCE_KELVINS = Celsius.ZERO + REFERENCE_CELSIUS;
    private static final double WATER_DENSITY =
            1 / Iapws97.specificVolume(REFERENCE_KELVINS, AbsolutePressure.STANDARD_ATMOSPHERE.si());

    private static final double WHOLE = MassFraction.percent(100).in(Units.MASS_PERCENT);

    private final Glycol glycol;
    private final GlycolData data;
    private final double glycolDensity;

    ConcentrationConversion(Glycol glycol) {
        this.glycol = glycol;
        this.data = GlycolData.of(glycol);
        this.glycolDensity = data.pure().density(REFERENCE_KELVINS);
    }

    MassFraction mass(VolumeFraction volume, ConcentrationDefinition definition) {
        double percent = volume.in(Units.VOLUME_PERCENT);
        double most = most(definition);
        if (percent > most) {
            throw new OutOfRangeException(
                    "volume fraction of " + glycol.text(),
                    volume.text(Units.VOLUME_PERCENT),
                    "0 to " + VolumeFraction.percent(most).text(Units.VOLUME_PERCENT, 4) + " by " + definition.words(),
                    "convert by ideal volumes at 20 degC, or give percent by mass");
        }
        return MassFraction.percent(Math.min(massPercent(percent, definition), WHOLE));
    }

    VolumeFraction volume(MassFraction mass, ConcentrationDefinition definition) {
        double percent = mass.in(Units.MASS_PERCENT);
        double most = mostMass(definition);
        if (percent > most) {
            throw new OutOfRangeException(
                    "mass fraction of " + glycol.text(),
                    mass.text(Units.MASS_PERCENT),
                    "0 to " + most + " mass% by " + definition.words(),
                    "convert by ideal volumes at 20 degC, or give percent by volume");
        }
        return VolumeFraction.percent(Math.min(volumePercent(percent, definition), WHOLE));
    }

    boolean covers(VolumeFraction volume, ConcentrationDefinition definition) {
        return volume.in(Units.VOLUME_PERCENT) <= most(definition);
    }

    boolean covers(MassFraction mass, ConcentrationDefinition definition) {
        return mass.in(Units.MASS_PERCENT) <= mostMass(definition);
    }

    private double mostMass(ConcentrationDefinition definition) {
        return switch (definition) {
            case ASHRAE_PAIRING -> data.pairing().mostMass();
            case IDEAL_20C -> WHOLE;
            case ON_SOLUTION_20C -> MelinderPolynomial.MOST_PERCENT;
        };
    }

    private double most(ConcentrationDefinition definition) {
        return definition == ConcentrationDefinition.IDEAL_20C
                ? WHOLE
                : volumePercent(mostMass(definition), definition);
    }

    private double volumePercent(double mass, ConcentrationDefinition definition) {
        return switch (definition) {
            case ASHRAE_PAIRING -> data.pairing().volume(mass);
            case IDEAL_20C -> ideal(mass, glycolDensity, WATER_DENSITY);
            case ON_SOLUTION_20C -> mass * data.melinder().density(mass, REFERENCE_CELSIUS) / glycolDensity;
        };
    }

    private double massPercent(double volume, ConcentrationDefinition definition) {
        return switch (definition) {
            case ASHRAE_PAIRING -> data.pairing().mass(volume);
            // the same form with the densities turned over
            case IDEAL_20C -> ideal(volume, 1 / glycolDensity, 1 / WATER_DENSITY);
            case ON_SOLUTION_20C -> root(mass -> volumePercent(mass, definition) - volume);
        };
    }

    /** Part of the glycol in percent when both parts are divided by their densities. */
    private static double ideal(double percent, double glycolDensity, double waterDensity) {
        double part = percent / glycolDensity;
        return 100 * part / (part + (WHOLE - percent) / waterDensity);
    }

    private static double root(UnivariateFunction difference) {
        double most = MelinderPolynomial.MOST_PERCENT;
        if (difference.value(most) <= 0) {
            return most;
        }
        return Root.of(difference, 0, most);
    }
}
