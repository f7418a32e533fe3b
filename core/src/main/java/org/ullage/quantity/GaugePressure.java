package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * Pressure counted from the surrounding air, as a gauge on the loop shows it. May be negative (a partial vacuum). Immutable.
 */
public final class GaugePressure extends Quantity<GaugePressure, Pressure> implements Pressure {

    private static final long serialVersionUID = 1L;

    private static final Kind<GaugePressure, Pressure> KIND = new Kind<>(
            "gauge pressure",
            PressureBasis.GAUGE,
            Kind.Range.ANY,
            GaugePressure::new,
            Units.BAR,
            Units.PSI,
            List.of(
                    Units.PASCAL,
                    Units.KILOPASCAL,
                    Units.MEGAPASCAL,
                    Units.BAR,
                    Units.MILLIBAR,
                    Units.PSI,
                    Units.METRE_OF_WATER,
                    Units.FOOT_OF_WATER));

    @JsonIgnore
    private GaugePressure(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of bar.
     *
     * @param number the number of bar
     * @return the gauge pressure
     * @throws OutOfRangeException if the number is not allowed for a gauge pressure
     */
    public static GaugePressure bar(double number) {
        return KIND.of(number, Units.BAR);
    }

    /**
     * Makes one from a number of kilopascals.
     *
     * @param number the number of kilopascals
     * @return the gauge pressure
     * @throws OutOfRangeException if the number is not allowed for a gauge pressure
     */
    public static GaugePressure kilopascals(double number) {
        return KIND.of(number, Units.KILOPASCAL);
    }

    /**
     * Makes one from a number of pounds-force per square inch.
     *
     * @param number the number of pounds-force per square inch
     * @return the gauge pressure
     * @throws OutOfRangeException if the number is not allowed for a gauge pressure
     */
    public static GaugePressure psi(double number) {
        return KIND.of(number, Units.PSI);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the gauge pressure
     * @throws OutOfRangeException if the number is not allowed for a gauge pressure
     */
    public static GaugePressure of(double number, Unit<Pressure> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#PASCAL}.
     *
     * @param si the SI value
     * @return the gauge pressure
     * @throws OutOfRangeException if the value is not allowed for a gauge pressure
     */
    public static GaugePressure ofSi(double si) {
        return new GaugePressure(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 12 psi}
     * @return the gauge pressure
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a gauge pressure
     */
    @JsonCreator
    public static GaugePressure parse(String text) {
        return KIND.parse(text);
    }

    /**
     * Reads a pressure of either basis and gives it as gauge.
     *
     * @param text such as {@code 10 psi} (gauge) or {@code 24.7 psi abs}
     * @param ambient the pressure of the surrounding air
     * @return the gauge pressure
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the text says absolute and the number is not above zero
     */
    public static GaugePressure parse(String text, AbsolutePressure ambient) {
        return PressureBasis.saysAbsolute(text) ? AbsolutePressure.parse(text).gauge(ambient) : parse(text);
    }

    /**
     * The same pressure counted from vacuum.
     *
     * @param ambient the pressure of the surrounding air
     * @return the absolute pressure
     * @throws OutOfRangeException if this is at or below vacuum for that ambient pressure
     */
    public AbsolutePressure absolute(AbsolutePressure ambient) {
        if (si() + ambient.si() <= 0) {
            throw new OutOfRangeException(
                    "gauge pressure",
                    text(Units.BAR),
                    "above vacuum, that is above "
                            + GaugePressure.ofSi(-ambient.si()).text(Units.BAR),
                    "check the sign, and that a gauge pressure was meant");
        }
        return AbsolutePressure.ofSi(si() + ambient.si());
    }

    /**
     * A higher pressure.
     *
     * @param rise the pressure difference to add
     * @return this pressure raised by the difference
     */
    public GaugePressure plus(PressureDifference rise) {
        return new GaugePressure(si() + rise.si());
    }

    /**
     * A lower pressure.
     *
     * @param drop the pressure difference to take away
     * @return this pressure lowered by the difference
     */
    public GaugePressure minus(PressureDifference drop) {
        return new GaugePressure(si() - drop.si());
    }

    /**
     * How far this pressure is above another.
     *
     * @param other the pressure to compare with
     * @return the difference, negative if this is the lower one
     */
    public PressureDifference minus(GaugePressure other) {
        return PressureDifference.ofSi(si() - other.si());
    }

    @Override
    Kind<GaugePressure, Pressure> kind() {
        return KIND;
    }
}
