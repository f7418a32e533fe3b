package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/**
 * A concentration in both ways of stating it: one given, the other converted by a definition. Immutable.
 *
 * @param mass by mass
 * @param volume by volume
 * @param definition how the one that was not given was found
 * @param givenByVolume which one was given
 */
record Concentration(
        MassFraction mass, VolumeFraction volume, ConcentrationDefinition definition, boolean givenByVolume)
        implements Serializable {

    private static final int DIGITS = 4;

    static Concentration of(Glycol glycol, VolumeFraction volume) {
        ConcentrationConversion conversion = new ConcentrationConversion(glycol);
        ConcentrationDefinition definition = usual(conversion.covers(volume, ConcentrationDefinition.ASHRAE_PAIRING));
        return new Concentration(conversion.mass(volume, definition), volume, definition, true);
    }

    static Concentration of(Glycol glycol, MassFraction mass) {
        ConcentrationConversion conversion = new ConcentrationConversion(glycol);
        ConcentrationDefinition definition = usual(conversion.covers(mass, ConcentrationDefinition.ASHRAE_PAIRING));
        return new Concentration(mass, conversion.volume(mass, definition), definition, false);
    }

    private static ConcentrationDefinition usual(boolean paired) {
        return paired ? ConcentrationDefinition.ASHRAE_PAIRING : ConcentrationDefinition.IDEAL_20C;
    }

    double massPercent() {
        return mass.in(Units.MASS_PERCENT);
    }

    double volumePercent() {
        return volume.in(Units.VOLUME_PERCENT);
    }

    /** As it was given. */
    String text() {
        return givenByVolume ? volumeText() : massText();
    }

    /** By mass, with the definition if it was converted. */
    String asMass() {
        return givenByVolume ? massText() + byDefinition() : massText();
    }

    /** By volume, with the definition if it was converted. */
    String asVolume() {
        return givenByVolume ? volumeText() : volumeText() + byDefinition();
    }

    private String volumeText() {
        return givenByVolume ? volume.text(Units.VOLUME_PERCENT) : volume.text(Units.VOLUME_PERCENT, DIGITS);
    }

    private String massText() {
        return givenByVolume ? mass.text(Units.MASS_PERCENT, DIGITS) : mass.text(Units.MASS_PERCENT);
    }

    private String byDefinition() {
        return " by " + definition.words();
    }
}
