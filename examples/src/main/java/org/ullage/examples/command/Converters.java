package org.ullage.examples.command;

import java.util.function.Function;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Values with units on the command line, read as everywhere else; a refusal keeps the library's words. */
public final class Converters {

    private Converters() {}

    /**
     * Teaches a command line and its sub-commands to read quantities.
     *
     * @param line the command line with all its sub-commands
     */
    public static void register(CommandLine line) {
        register(line, Volume.class, Volume::parse);
        register(line, Temperature.class, Temperature::parse);
        register(line, GaugePressure.class, GaugePressure::parse);
        register(line, Length.class, Length::parse);
        register(line, Area.class, Area::parse);
        register(line, Mass.class, Mass::parse);
        register(line, TemperatureDifference.class, TemperatureDifference::parse);
        register(line, VolumeFraction.class, VolumeFraction::parse);
    }

    private static <T> void register(CommandLine line, Class<T> type, Function<String, T> reading) {
        line.registerConverter(type, text -> {
            try {
                return reading.apply(text);
            } catch (IllegalArgumentException refusal) {
                throw new TypeConversionException(refusal.getMessage());
            }
        });
    }
}
