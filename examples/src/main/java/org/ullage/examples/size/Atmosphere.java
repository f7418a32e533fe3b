package org.ullage.examples.size;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.file.Quoted;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.UnreadableQuantityException;

/** Reads the pressure of the air: an absolute pressure, with or without {@code abs}, or an altitude. */
final class Atmosphere {

    private Atmosphere() {}

    static AbsolutePressure parse(String text) {
        Length altitude = ifReadable(text, Length::parse);
        if (altitude != null) {
            return StandardAtmosphere.at(altitude);
        }
        AbsolutePressure air = ifReadable(text, AbsolutePressure::parse);
        if (air == null) {
            air = ifReadable(text + " abs", AbsolutePressure::parse);
        }
        if (air == null) {
            throw new OutOfRangeException(
                    "pressure of the air",
                    Quoted.of(text),
                    "an absolute pressure such as 101.325 kPa or 14.7 psi abs, or an altitude such as 1500 m or 5000 ft",
                    "write a number and one of these units");
        }
        requireAir(air);
        return air;
    }

    /** No site has more or less: outside, the unit is wrong or gauge and absolute were mixed up. */
    private static void requireAir(AbsolutePressure air) {
        AbsolutePressure least = StandardAtmosphere.at(StandardAtmosphere.HIGHEST);
        AbsolutePressure most = StandardAtmosphere.at(StandardAtmosphere.LOWEST);
        if (air.compareTo(least) < 0 || air.compareTo(most) > 0) {
            throw new OutOfRangeException(
                    "pressure of the air",
                    both(air),
                    "from " + both(least) + " to " + both(most) + ", the standard atmosphere between "
                            + StandardAtmosphere.HIGHEST.text(Units.METRE) + " and "
                            + StandardAtmosphere.LOWEST.text(Units.METRE),
                    "check the number and its unit");
        }
    }

    private static String both(AbsolutePressure air) {
        return air.text(Units.KILOPASCAL) + " (" + air.text(Units.PSI) + ")";
    }

    private static <T> @Nullable T ifReadable(String text, Function<String, T> reading) {
        try {
            return reading.apply(text);
        } catch (UnreadableQuantityException e) {
            return null;
        }
    }
}
