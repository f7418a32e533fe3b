package org.ullage.published;

import java.util.List;
import org.ullage.method.HotBasis;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.TemperatureRange;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/**
 * International Residential Code, table M2003.2, by the code formula it was made with: average temperature 195 degF, filled to 12 psig,
 * at most 30 psig, whatever the loop's own are. The answer is not rounded; {@link CodeTankTable} has the printed cells.
 *
 * <p>A loop that is hotter, needs more than 12 psig cold or allows less than 30 psig is refused; one that is easier gets the table's
 * answer with a warning, and so does one above the table's 100 gal.
 */
final class IrcM2003Method {

    private static final String TABLE = "International Residential Code, table M2003.2";

    private static final Source BASIS =
            Source.fromMemory(TABLE, "195 degF average, filled to 12 psig, at most 30 psig");

    private static final Source SIZES = Source.fromMemory(TABLE, "rows from 10 to 100 gal");

    private static final Source PSIA = Source.computed(
            "Michigan Administrative Code R 408.4272, table 272B", "met by the formula with air of 14.7 psia");

    private static final Source WRITTEN = Source.computed("unit conversion", "195 degF written as 91 degC");

    private static final Constant AVERAGE = new Constant("T", 195, "degF", BASIS);
    private static final Temperature HIGHEST = Temperature.celsius(new Constant("t", 91, "degC", WRITTEN).value());
    private static final Temperature COOLER = Temperature.fahrenheit(new Constant("T", 194, "degF", WRITTEN).value());
    private static final Temperature FREEZING = Temperature.celsius(0);
    private static final Constant EXPANSION = AsmeMethod.expansionAt(AVERAGE);

    private static final TemperatureRange TEMPERATURES = new TemperatureRange(
            AsmeMethod.COUNTS_FROM,
            FREEZING,
            HIGHEST,
            List.of(new TemperatureRange.Remark(
                    FREEZING,
                    COOLER,
                    new Caution(
                            "This table was made for an average of 195 degF: the loop's lower temperature was not used, and a"
                                    + " smaller vessel may do.",
                            BASIS))),
            BASIS);

    private static final ColdPressureRule COLD = ColdPressureRule.fixed(GaugePressure.psi(12), BASIS);
    private static final FinalPressureRule LAST = FinalPressureRule.fixed(GaugePressure.psi(30), BASIS);
    private static final AtmosphereRule AIR = new AtmosphereRule(AbsolutePressure.psi(14.7), PSIA);

    static final Method METHOD = Method.named(
                    "irc-m2003", "IRC table M2003.2 (195 degF, 12/30 psig), by its formula", BASIS)
            .vessels(VesselKind.PLAIN_STEEL, VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .hotBasis(HotBasis.MEAN)
            .expansion(FixedExpansion.of(EXPANSION, TEMPERATURES))
            .pipeCredit(PipeCredit.INCLUDED)
            .coldPressure(COLD)
            .finalPressure(LAST)
            .atmosphere(AIR)
            .remark(MethodRemark.remembered(BASIS))
            .remark(MethodRemark.above(
                    Volume.gallons(100),
                    "The contents are above the table's 100 gal: its formula was carried on beyond the printed rows.",
                    SIZES))
            .build();

    private IrcM2003Method() {}

    /** Tank volume for each volume of contents, by the formula on the table's basis. */
    static double volumePerContents(VesselKind kind) {
        double air = AIR.pressure().si();
        double cold = COLD.pascals(0, 0, air);
        double charge = METHOD.charge(kind).pascals(cold, air);
        return EXPANSION.value() * GasLaw.volumePerWater(charge, cold, LAST.pascals(0, air));
    }
}
