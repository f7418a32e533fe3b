package org.ullage.quantity;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the quantities of one type have in common: name, units, allowed range and the way from text to value.
 *
 * @param <Q> the quantity type
 * @param <D> the dimension of its units
 */
final class Kind<Q extends Quantity<Q, D>, D> {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?)\\s*(.*?)\\s*");

    private final String name;
    private final PressureBasis basis;
    private final Range range;
    private final DoubleFunction<Q> make;
    private final Unit<D> si;
    private final Unit<D> ip;
    private final List<Unit<D>> units;

    /**
     * @param units every unit that is read; the first is coherent SI
     */
    Kind(String name, Range range, DoubleFunction<Q> make, Unit<D> si, Unit<D> ip, List<Unit<D>> units) {
        this(name, PressureBasis.NONE, range, make, si, ip, units);
    }

    Kind(
            String name,
            PressureBasis basis,
            Range range,
            DoubleFunction<Q> make,
            Unit<D> si,
            Unit<D> ip,
            List<Unit<D>> units) {
        this.name = name;
        this.basis = basis;
        this.range = range;
        this.make = make;
        this.si = si;
        this.ip = ip;
        this.units = units;
    }

    /** The values a kind allows, in coherent SI. */
    enum Range {
        /** Any finite number. */
        ANY("finite") {
            @Override
            boolean holds(double si) {
                return Double.isFinite(si);
            }
        },
        /** Zero or more. */
        NOT_NEGATIVE("zero or more and finite") {
            @Override
            boolean holds(double si) {
                return si >= 0 && Double.isFinite(si);
            }
        },
        /** More than zero. */
        POSITIVE("above zero and finite") {
            @Override
            boolean holds(double si) {
                return si > 0 && Double.isFinite(si);
            }
        },
        /** A part of a whole. */
        FRACTION("from 0 % to 100 %") {
            @Override
            boolean holds(double si) {
                return si >= 0 && si <= 1;
            }
        };

        private final String words;

        Range(String words) {
            this.words = words;
        }

        abstract boolean holds(double si);
    }

    String name() {
        return name;
    }

    /** What follows the unit in text to set an absolute pressure apart. */
    String suffix() {
        return basis == PressureBasis.ABSOLUTE ? " abs" : "";
    }

    Unit<D> coherent() {
        return units.get(0);
    }

    List<Unit<D>> units() {
        return units;
    }

    Unit<D> preferred(UnitSystem system) {
        return system == UnitSystem.SI ? si : ip;
    }

    double checked(double value) {
        if (!range.holds(value)) {
            throw new OutOfRangeException(
                    name, value + " " + coherent() + suffix(), range.words, "check the number and its unit");
        }
        return value;
    }

    Q of(double number, Unit<D> unit) {
        double value = unit.toSi(number);
        if (!range.holds(value)) {
            throw new OutOfRangeException(
                    name, number + " " + unit + suffix(), range.words, "check the number and its unit");
        }
        return make.apply(value);
    }

    Q parse(String text) {
        Matcher parts = NUMBER_AND_UNIT.matcher(text);
        if (!parts.matches()) {
            throw unreadable(text, "it does not start with a plain decimal number (a point for decimals, no commas)");
        }
        return of(Double.parseDouble(parts.group(1)), unitWritten(parts.group(2), text));
    }

    private Unit<D> unitWritten(String written, String text) {
        if (written.isEmpty()) {
            throw unreadable(text, "the unit is missing");
        }
        String plain = basis.strip(written, reason -> unreadable(text, reason));
        return units.stream()
                .filter(unit -> unit.isWritten(plain))
                .findFirst()
                .orElseThrow(() -> unreadable(text, "the unit \"" + written + "\" is not known here"));
    }

    private UnreadableQuantityException unreadable(String text, String reason) {
        String accepted = units.stream().map(unit -> unit.symbol() + suffix()).collect(Collectors.joining(", "));
        return new UnreadableQuantityException(text, name, reason, accepted);
    }
}
