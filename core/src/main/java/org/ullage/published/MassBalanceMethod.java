package org.ullage.published;

import org.ullage.method.MassBalanceExpansion;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/**
 * This library's own model: the mass that leaves the loop, at the vessel's temperature, between the real densities, with the pipe's
 * growth in the balance and no reserve. Its margins on the pressures are the ones in common use; it is the yardstick for the rest.
 */
final class MassBalanceMethod {

    private static final Source MODEL =
            Source.computed("conservation of mass", "liquid, pipe and vessel at their own temperatures");

    private static final Source ROOM_TEMPERATURE =
            Source.commonPractice("vessel on the cold side of the loop, its water and gas at 20 degC");

    private static final Source MARGIN = Source.commonPractice("0.5 bar below the relief setting, at most 90 % of it");

    private static final Constant VESSEL = new Constant("t_v", 20, "degC", ROOM_TEMPERATURE);

    static final Method METHOD = Method.named("mass-balance", "Mass balance (this library's model)", MODEL)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER, VesselKind.PLAIN_STEEL)
            .expansion(new MassBalanceExpansion(Temperature.celsius(VESSEL.value()), MODEL))
            .pipeCredit(PipeCredit.BALANCED)
            .coldPressure(AshraeMethod.COLD)
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.5), MARGIN))
            .build();

    private MassBalanceMethod() {}
}
