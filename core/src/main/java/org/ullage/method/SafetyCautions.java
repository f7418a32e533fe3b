package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** The dangers of working on a pressurised hot loop, said with every answer. */
final class SafetyCautions {

    private static final Source USUAL_CARE = Source.commonPractice("usual care on pressurised loops");

    private static final List<Caution> EVERY_LOOP = List.of(
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

    private static final List<Caution> MIXTURE = List.of(
            caution(
                    "Antifreeze: keep ethylene glycol away from drinking water and drains; a backflow preventer as the local code"
                            + " asks, and no automatic make-up with plain water, which dilutes it."),
            caution(
                    "Measure concentration, pH and inhibitor every season: spent fluid corrodes the thinnest metal of the loop"
                            + " first, often the steel of the vessel."));

    private SafetyCautions() {}

    static List<Caution> of(SizingJob job) {
        if (job.loop().fluid().isWater()) {
            return EVERY_LOOP;
        }
        List<Caution> cautions = new ArrayList<>(EVERY_LOOP);
        cautions.addAll(MIXTURE);
        return List.copyOf(cautions);
    }

    private static Caution caution(String text) {
        return new Caution(text, USUAL_CARE);
    }
}
