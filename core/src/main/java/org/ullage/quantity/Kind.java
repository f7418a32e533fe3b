package org.ullage.quantity;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * What the quantities of one type have in common: name, units, allowed range and the way from text to value.
 *
 * @param <Q> the quantity type
 * @param <D> the dimension of its units
 */
final class Kind<Q extends Quantity<Q, D>, D> {

    /** What may follow a leading number that is no plain decimal: a grouping mark, a second point or more digits. */
    private static final String GOES_ON = ",.'\u2019_0123456789";

    /** Digits for the lower limit of a unit in a message. */
    private static final int LIMIT_DIGITS = 6;

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
        ANY {
            @Override
            boolean holds(double si) {
                return Double.isFinite(si);
            }

            @Override
            String words(String zero) {
                return "finite";
            }
        },
        /** Zero or more. */
        NOT_NEGATIVE {
            @Override
            boolean holds(double si) {
                return si >= 0 && Double.isFinite(si);
            }

            @Override
            String words(String zero) {
                return "zero or more and finite";
            }
        },
        /** More than zero. */
        POSITIVE {
            @Override
            boolean holds(double si) {
                return si > 0 && Double.isFinite(si);
            }

            @Override
            String words(String zero) {
                return "above " + zero + " and finite";
            }
        },
        /** A part of a whole. */
        FRACTION {
            @Override
            boolean holds(double si) {
                return si >= 0 && si <= 1;
            }

            @Override
            String words(String zero) {
                return "from 0 % to 100 %";
            }
        };

        abstract boolean holds(double si);

        /** The range for people; zero is the coherent zero in the unit they wrote, such as {@code -273.15 degC}. */
        abstract String words(String zero);
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
            throw outOfRange(value, coherent());
        }
        return value;
    }

    Q of(double number, Unit<D> unit) {
        double value = unit.toSi(number);
        if (!range.holds(value)) {
            throw outOfRange(number, unit);
        }
        return make.apply(value);
    }

    Q parse(String text) {
        Written written = Written.of(text);
        if (written.number().isEmpty()) {
            throw unreadable(text, "it does not start with a number (a point for decimals, a hyphen for minus)");
        }
        double number = Double.parseDouble(written.number());
        if (Double.isInfinite(number)) {
            throw unreadable(text, "its number is too large");
        }
        return of(number, unitWritten(written.unit(), text));
    }

    private Unit<D> unitWritten(String written, String text) {
        if (written.isEmpty()) {
            throw unreadable(text, "the unit is missing");
        }
        String plain = basis.strip(written, reason -> unreadable(text, reason));
        return units.stream()
                .filter(unit -> unit.isWritten(plain))
                .findFirst()
                .orElseThrow(() -> unreadable(text, whyUnknown(written)));
    }

    private static String whyUnknown(String written) {
        // A reciprocal unit begins with a digit too.
        boolean numberGoesOn = GOES_ON.indexOf(written.charAt(0)) >= 0 && !written.startsWith("1/");
        return numberGoesOn
                ? "its number is not a plain decimal (a point for decimals, no commas or blanks between digits)"
                : "the unit \"" + UnreadableQuantityException.shortened(written) + "\" is not known here";
    }

    private OutOfRangeException outOfRange(double number, Unit<D> unit) {
        String zero = Digits.significant(unit.fromSi(0), LIMIT_DIGITS) + " " + unit + suffix();
        return new OutOfRangeException(
                name, number + " " + unit + suffix(), range.words(zero), "check the number and its unit");
    }

    private UnreadableQuantityException unreadable(String text, String reason) {
        String accepted = units.stream().map(unit -> unit.symbol() + suffix()).collect(Collectors.joining(", "));
        return new UnreadableQuantityException(text, name, reason, accepted);
    }
}
