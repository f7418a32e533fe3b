package org.ullage.support;

import org.ullage.quantity.AdditiveQuantity;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;

/** Refusals that several checks of this room share. */
final class Inputs {

    private Inputs() {}

    static void requirePositive(String name, AdditiveQuantity<?, ?> value, String remedy) {
        if (!(value.si() > 0)) {
            throw new OutOfRangeException(name, text(value), "above zero", remedy);
        }
    }

    static void requireNotNegative(String name, AdditiveQuantity<?, ?> value, String remedy) {
        if (value.si() < 0) {
            throw new OutOfRangeException(name, text(value), "zero or more", remedy);
        }
    }

    static void requireWithin(String name, double number, double least, double most, String remedy) {
        if (!(number >= least && number <= most)) {
            throw new OutOfRangeException(name, Double.toString(number), "from " + least + " to " + most, remedy);
        }
    }

    static void requireAbove(String name, double number, double least, String remedy) {
        if (!(number > least && Double.isFinite(number))) {
            throw new OutOfRangeException(name, Double.toString(number), "above " + least + " and finite", remedy);
        }
    }

    static void requireCount(String name, int number, int least, String remedy) {
        if (number < least) {
            throw new OutOfRangeException(name, Integer.toString(number), least + " or more", remedy);
        }
    }

    private static String text(Quantity<?, ?> value) {
        return value instanceof Length length ? SupportText.both(length) : value.textInBothSystems();
    }
}
