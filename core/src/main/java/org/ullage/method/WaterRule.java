package org.ullage.method;

import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** What a rule printed for water says when it is used for something else. */
final class WaterRule {

    private WaterRule() {}

    static Caution isNotFor(LoopFluid fluid, Source source) {
        return new Caution(
                "This rule's expansion is that of water; " + fluid.name()
                        + " expands more, so the vessel may be too small. Take a method that uses the fluid's density.",
                source);
    }
}
