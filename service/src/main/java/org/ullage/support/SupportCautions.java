package org.ullage.support;

import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** The dangers of hanging up a vessel and taking it off. */
final class SupportCautions {

    private static final Source CARE = Source.commonPractice("usual care with supports of water-filled vessels");

    static final Caution ENGINEER =
            caution("A first check only. A licensed structural or mechanical engineer, the local code and"
                    + " the instructions of vessel, anchor and support come before it.");

    static final Caution WATERLOGGED =
            caution("Support the vessel for its waterlogged weight: a failed membrane fills it without a sign.");

    static final Caution JOINTS =
            caution("Soldered, brazed, threaded and flanged joints, the tee or branch at the other end, the"
                    + " vessel's own connection, pressure, vibration and knocks are not in this check: any of them may be weaker than"
                    + " the pipe.");

    static final Caution ANCHORS =
            caution("Edge distance, spacing, cracked concrete, masonry, embedment and a test of the anchors are"
                    + " not in this check; the allowable load of an anchor must be for the base it is set in.");

    static final Caution SPANS = caution(
            "Hanger spacing is for pipe alone, not for spans with concentrated loads such as vessels,"
                    + " valves or strainers: give those a support of their own. A code check must use the adopted code.");

    static final Caution CHANNEL = caution(
            "Shear, web crippling, twist, side buckling and the channel's own weight are not in this"
                    + " check; for spans below 24 in (610 mm) and for the fittings take the figures of the channel's maker.");

    static final Caution DRAIN_FIRST =
            caution("Isolate the vessel, let it cool, bring the water side to zero pressure, release the"
                    + " gas charge and drain it before it is lifted. A failed membrane holds water on the gas side, which drains by the"
                    + " gas valve or not at all: weigh before lifting.");

    static final Caution LIFTING =
            caution("A lifting limit is for two hands, a smooth motion and good footing. Ladders, confined space,"
                    + " wet hands, one-handed or shared lifts and people with health limits need less weight or a hoist; the local rules on"
                    + " manual handling decide.");

    private SupportCautions() {}

    private static Caution caution(String text) {
        return new Caution(text, CARE);
    }
}
