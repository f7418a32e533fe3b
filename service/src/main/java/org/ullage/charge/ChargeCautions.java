package org.ullage.charge;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** The dangers of work on the gas side. */
final class ChargeCautions {

    private static final Source USUAL_CARE = Source.commonPractice("usual care with pressurised gas and loops");

    private static final List<Caution> GAS = List.of(
            caution(
                    "Charge from a cylinder only through a pressure regulator set no higher than the charge, with the cylinder"
                            + " fixed upright; a bottle's own pressure bursts a vessel."),
            caution(
                    "Keep the charge below the highest pressure on the vessel's data plate, and the gauge's face away from you."),
            caution("Do not breathe escaping nitrogen in a small room: it displaces the air."));

    private static final List<Caution> CODES = List.of(caution(
            "Codes and the boiler and vessel instructions that hold on site, and the judgement of a licensed person, come before"
                    + " this list."));

    private static final List<Caution> WATER_SIDE = List.of(
            caution(
                    "The loop is under pressure and its water scalds above about 50 degC: let it cool before a drain is opened."),
            caution(
                    "A vessel that has lost its charge is full of water and weighs its shell and its whole nominal volume of"
                            + " fluid: drain it before lifting, and do not trust its hanger."),
            caution(
                    "Fluid with glycol belongs neither into drains nor into drinking water: catch it and put it back or dispose of"
                            + " it as the local code asks."));

    private static final List<Caution> WHICH_GAS =
            List.of(caution("Dry nitrogen or air, never oxygen: oxygen with grease or rubber explodes."));

    private ChargeCautions() {}

    /** The cautions of a sizing, which name the gas already, with those of the gas side. */
    static List<Caution> with(List<Caution> ofSizing) {
        return joined(ofSizing, GAS);
    }

    /** All that belongs to a check of the charge by itself. */
    static List<Caution> ofCheck() {
        return joined(joined(CODES, WATER_SIDE), joined(WHICH_GAS, GAS));
    }

    private static List<Caution> joined(List<Caution> some, List<Caution> others) {
        List<Caution> all = new ArrayList<>(some);
        all.addAll(others);
        return List.copyOf(all);
    }

    private static Caution caution(String text) {
        return new Caution(text, USUAL_CARE);
    }
}
