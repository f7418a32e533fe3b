package org.ullage.published;

import org.ullage.method.FixedFillExpansion;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/**
 * Spanish vocational course: 1.2 V C_e C_p with a gross table of water from 4 degC, static head alone as cold pressure but 0.5 bar, the
 * relief setting as final pressure. About 10 % more expansion than UNE 100155 and a 20 % margin over it.
 */
final class SpanishCourseMethod {

    private static final Source COURSE =
            Source.published("Balearic government, vocational course on heating installations", "unit 3.3, first part");

    private static final Source FROM_FOUR =
            Source.computed("density of water after Kell 1975", "from 4 degC meets every row of the course's table");

    static final Method METHOD = Method.named("practice-es", "Spanish course, 1.2 x gross expansion", COURSE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new FixedFillExpansion(Temperature.celsius(4), FROM_FOUR))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofExpansion(0.2, COURSE))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), COURSE)
                    .notBelow(AbsolutePressure.bar(1.5), COURSE))
            .finalPressure(FinalPressureRule.setting(COURSE))
            .atmosphere(OneBar.of(COURSE))
            .remark(MethodRemark.practice(COURSE))
            .build();

    private SpanishCourseMethod() {}
}
