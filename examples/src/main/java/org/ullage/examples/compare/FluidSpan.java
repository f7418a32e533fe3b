package org.ullage.examples.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.size.FoundLoop;
import org.ullage.examples.size.WrittenUnit;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/**
 * The temperatures between which models are compared, and the units they are answered in.
 *
 * @param from temperature at the start
 * @param to temperature at the end
 * @param system metric or inch-pound
 */
record FluidSpan(Temperature from, Temperature to, UnitSystem system) {

    private static final Temperature USUAL_FROM = Temperature.celsius(10);
    private static final Temperature USUAL_TO = Temperature.celsius(80);

    private static final List<Unit<Temperature>> TEMPERATURES =
            List.of(Units.CELSIUS, Units.KELVIN, Units.FAHRENHEIT, Units.RANKINE);

    /**
     * Takes what is written, else the loop's, else 10 to 80 degC.
     *
     * @throws IllegalArgumentException if a temperature cannot be read
     */
    static FluidSpan of(@Nullable String from, @Nullable String to, @Nullable FoundLoop loop) {
        return new FluidSpan(
                first(from, loop == null ? null : loop.job().temperatures().cold(), USUAL_FROM),
                first(to, loop == null ? null : loop.job().temperatures().hot(), USUAL_TO),
                system(from == null ? to : from, loop));
    }

    FluidSpan in(@Nullable UnitSystem wanted) {
        return wanted == null ? this : new FluidSpan(from, to, wanted);
    }

    Temperature highest() {
        return from.compareTo(to) > 0 ? from : to;
    }

    private static Temperature first(@Nullable String written, @Nullable Temperature ofLoop, Temperature usual) {
        if (written != null) {
            return Temperature.parse(written);
        }
        return ofLoop == null ? usual : ofLoop;
    }

    private static UnitSystem system(@Nullable String written, @Nullable FoundLoop loop) {
        if (written == null) {
            return loop == null ? UnitSystem.SI : loop.system();
        }
        Unit<Temperature> unit = WrittenUnit.of(written, TEMPERATURES);
        return Units.FAHRENHEIT.equals(unit) || Units.RANKINE.equals(unit) ? UnitSystem.IP : UnitSystem.SI;
    }
}
