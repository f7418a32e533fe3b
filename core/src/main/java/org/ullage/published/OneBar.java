package org.ullage.published;

import org.ullage.pressure.AtmosphereRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;

/** The air pressure of the European rules that write gauge pressure + 1. */
final class OneBar {

    private OneBar() {}

    static AtmosphereRule of(Source source) {
        return new AtmosphereRule(AbsolutePressure.bar(1), source);
    }
}
