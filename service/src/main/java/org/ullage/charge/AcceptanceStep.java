package org.ullage.charge;

import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasLaw;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/** The step that works out what a vessel takes in at a charge. */
final class AcceptanceStep {

    private AcceptanceStep() {}

    static Step of(VesselAcceptance vessel, String when, String symbol, AbsolutePressure charge, String result) {
        List<Term> terms = new ArrayList<>(List.of(
                Term.of("V_n", vessel.nominal()),
                Term.of(symbol, charge),
                Term.of("p_i", vessel.cold()),
                Term.of("p_f", vessel.last())));
        boolean isothermal = vessel.gas().isIsothermal();
        if (!isothermal) {
            terms.add(Term.number("g_i", vessel.gas().coldRatio()));
            terms.add(Term.number("g_f", vessel.gas().hotRatio()));
        }
        VolumeFraction limit = vessel.limit();
        if (limit != null) {
            terms.add(Term.of("a", limit));
        }
        String most = limit == null ? "1" : "a";
        String hot = share(most, symbol + (isothermal ? "" : " * g_f") + " / p_f");
        String cold = share(most, symbol + (isothermal ? "" : " * g_i") + " / p_i");
        return new Step(
                "what the vessel takes in between cold and final pressure, " + when,
                "V_n * max(0, " + hot + " - " + cold + ")",
                terms,
                Term.of(result, vessel.at(charge)),
                GasLaw.SOURCE);
    }

    private static String share(String most, String ratio) {
        return "min(" + most + ", max(0, 1 - " + ratio + "))";
    }
}
