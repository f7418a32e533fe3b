package org.ullage.published;

import java.math.BigDecimal;
import java.util.List;
import org.ullage.method.HotBasis;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.method.PolynomialExpansion;
import org.ullage.method.TemperatureRange;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/**
 * ASME BPVC Section IV, the mechanical codes and several state boiler rules: (0.00041 T - 0.0466) of the contents, T the average
 * operating temperature in degF. In SI the same line is 0.000738 T - 0.03348 with T in degC.
 *
 * <p>The line is water's expansion from about 40 degF net of steel pipe. It is zero at 113.7 degF, so low-temperature loops are
 * refused; from there to 160 degF it is up to 29 % low, and above 280 degF low again.
 */
final class AsmeMethod {

    private static final Source FORMULA = Source.secondHand(
            "ASME BPVC Section IV, HG-709", "formula for closed tanks", "13 NCAC 13 .0412(d), which prints it");

    private static final Source TABLE_BASIS =
            Source.published("Michigan Administrative Code R 408.4272", "table 272B: fill 12 psig, maximum 30 psig");

    private static final Source RANGE = Source.fromMemory("older handbooks", "160 to 280 degF stated for the formula");

    private static final Source COMPARISON =
            Source.computed("IAPWS-95", "net expansion from 40 degF in steel pipe beside the formula");

    private static final Source WATER =
            Source.secondHand("IAPWS R7-97(2012)", "section 5, critical temperature", "public code of the release");

    private static final Constant LINE_AT_ZERO = new Constant("c0", -0.0466, "1", FORMULA);
    private static final Constant SLOPE = new Constant("c1", 0.00041, "1/degF", FORMULA);
    private static final Constant NO_SQUARE = new Constant("c2", 0, "1/degF2", FORMULA);

    private static final Temperature ZERO = fahrenheit(-LINE_AT_ZERO.value() / SLOPE.value());
    private static final Temperature FROM = fahrenheit(new Constant("T_min", 160, "degF", RANGE).value());
    private static final Temperature TO = fahrenheit(new Constant("T_max", 280, "degF", RANGE).value());
    private static final Temperature CRITICAL_POINT =
            Temperature.kelvins(new Constant("T_c", 647.096, "K", WATER).value());
    /** The temperature from which the line is water's expansion. */
    static final Temperature COUNTS_FROM = fahrenheit(new Constant("T_fill", 40, "degF", COMPARISON).value());

    private static final TemperatureRange TEMPERATURES = new TemperatureRange(
            COUNTS_FROM,
            ZERO,
            null,
            List.of(
                    new TemperatureRange.Remark(
                            ZERO,
                            FROM,
                            new Caution(
                                    "Below 160 degF this formula is outside its stated range and low: 10 % at 160 degF, 29 %"
                                            + " at 140 degF, nothing at 113.7 degF. The vessel may be too small.",
                                    RANGE)),
                    new TemperatureRange.Remark(
                            TO,
                            CRITICAL_POINT,
                            new Caution(
                                    "Above 280 degF this formula is outside its stated range and about 6 % low. The vessel may"
                                            + " be too small.",
                                    RANGE))),
            FORMULA);

    static final Method METHOD = Method.named("asme-iv", "ASME BPVC Section IV / IMC formula", FORMULA)
            .vessels(VesselKind.PLAIN_STEEL, VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .hotBasis(HotBasis.MEAN)
            .expansion(new PolynomialExpansion(
                    Units.FAHRENHEIT, LINE_AT_ZERO, SLOPE, NO_SQUARE, TEMPERATURES, null, FORMULA))
            .pipeCredit(PipeCredit.INCLUDED)
            .coldPressure(AshraeMethod.COLD)
            .finalPressure(FinalPressureRule.setting(TABLE_BASIS))
            .build();

    private AsmeMethod() {}

    /** What the line counts at one average temperature in degF, for tables that were made for one; without rounding. */
    static Constant expansionAt(Constant average) {
        BigDecimal rise = BigDecimal.valueOf(SLOPE.value()).multiply(BigDecimal.valueOf(average.value()));
        double share = BigDecimal.valueOf(LINE_AT_ZERO.value()).add(rise).doubleValue();
        return new Constant("e", share, "1", FORMULA);
    }

    private static Temperature fahrenheit(double number) {
        return Temperature.fahrenheit(number);
    }
}
