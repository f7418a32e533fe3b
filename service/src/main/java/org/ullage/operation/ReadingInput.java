package org.ullage.operation;

import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/** The values that {@link TwoReadings} works with, each with an error of its own. */
public enum ReadingInput {
    /** The pressure of the colder reading. */
    COLD_PRESSURE("cold pressure"),
    /** The temperature of the colder reading. */
    COLD_TEMPERATURE("cold temperature"),
    /** The pressure of the hotter reading. */
    HOT_PRESSURE("hot pressure"),
    /** The temperature of the hotter reading. */
    HOT_TEMPERATURE("hot temperature"),
    /** The gas charge of the vessel. */
    CHARGE("gas charge"),
    /** The nominal volume of the vessel. */
    NOMINAL_VOLUME("nominal volume");

    private final String words;

    ReadingInput(String words) {
        this.words = words;
    }

    /** A difference of this input for people. */
    String text(double si) {
        return switch (this) {
            case COLD_PRESSURE, HOT_PRESSURE, CHARGE ->
                PressureDifference.ofSi(si).text(UnitSystem.SI);
            case COLD_TEMPERATURE, HOT_TEMPERATURE ->
                TemperatureDifference.ofSi(si).text(UnitSystem.SI);
            case NOMINAL_VOLUME -> Volume.ofSi(si).text(UnitSystem.SI);
        };
    }

    /**
     * The input in words.
     *
     * @return such as {@code cold pressure}
     */
    @Override
    public String toString() {
        return words;
    }
}
