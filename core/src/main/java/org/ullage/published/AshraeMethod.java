package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.vessel.VesselKind;

/**
 * ASHRAE Handbook: real specific volumes at both temperatures, pipe term 3 alpha dt of the contents, no reserve; closed plain
 * tanks from atmospheric air, diaphragm and bladder vessels charged to the cold pressure, open tanks with a 100 % margin.
 *
 * <p>The pipe term multiplies the contents. Printed sheets exist that lose that product, which makes the term vanish.
 */
final class AshraeMethod {

    private static final String HANDBOOK = "ASHRAE Handbook, HVAC Systems and Equipment, hydronic chapter";

    private static final Source DIAPHRAGM_EQUATION =
            Source.secondHand(HANDBOOK, "2000, ch. 12 eq. 14", "a project calculation sheet");

    private static final Source TOP_ALLOWANCE = Source.commonPractice(
            "4 psi (27.6 kPa) kept at the top of the loop, as in a project calculation sheet after the ASHRAE Handbook");

    private static final Source BELOW_SETTING =
            Source.commonPractice("final pressure 90 % of the relief setting, remembered practice");

    private static final Source OPEN_TANK = Source.fromMemory(HANDBOOK, "2000, ch. 12, open tank");

    /** Kept at the highest point, cold. */
    static final ColdPressureRule COLD = ColdPressureRule.staticHeadPlus(PressureDifference.psi(4), TOP_ALLOWANCE);

    static final Method METHOD = Method.named(
                    "ashrae", "ASHRAE Handbook (HVAC Systems and Equipment)", DIAPHRAGM_EQUATION)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER, VesselKind.PLAIN_STEEL, VesselKind.OPEN)
            .expansion(new DensityExpansion(DIAPHRAGM_EQUATION))
            .pipeCredit(PipeCredit.SUBTRACTED)
            .coldPressure(COLD)
            .finalPressure(FinalPressureRule.shareOfSetting(0.9, BELOW_SETTING))
            .openAllowance(new Constant("k_open", 2, "1", OPEN_TANK))
            .build();

    private AshraeMethod() {}
}
