package org.ullage.method;

import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** The dangers of working on a pressurised hot loop, said with every answer. */
final class SafetyCautions {

    private static final Source USUAL_CARE = Source.commonPractice("usual care on pressurised loops");

    static final List<Caution> ALL = List.of(
            caution(
                    "Codes and the boiler and vessel instructions that hold on site, and the judgement of a licensed person, come"
                            + " before this calculation."),
            caution(
                    "The vessel does not replace the relief valve. Every part must be rated above the relief setting; no valve"
                            + " that can be closed by accident may stand between boiler and vessel."),
            caution(
                    "Water above about 50 degC scalds. Let the loop cool and bring the water side to zero pressure before a vessel"
                            + " is opened, charged or taken off."),
            caution(
                    "Set and check the gas charge with the water side isolated and drained to zero pressure; use dry nitrogen or"
                            + " air, never oxygen."),
            caution(
                    "A waterlogged vessel weighs its shell and its whole nominal volume of fluid: support it for that, and drain"
                            + " it before lifting."));

    private SafetyCautions() {}

    private static Caution caution(String text) {
        return new Caution(text, USUAL_CARE);
    }
}
