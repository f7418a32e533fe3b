package org.ullage.examples.compare;

import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/** A difference of volumes with its sign. */
final class Signed {

    private Signed() {}

    static String text(Volume difference, UnitSystem system) {
        return (difference.si() < 0 ? "" : "+") + difference.text(system);
    }
}
