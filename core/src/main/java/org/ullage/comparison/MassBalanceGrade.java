package org.ullage.comparison;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.pressure.PressureInputs;
import org.ullage.provenance.Source;
import org.ullage.published.Methods;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * How a method's vessel stands by the mass balance: how much larger it is than the smallest vessel, with the same charge and cold
 * pressure, in which the water that really leaves the loop reaches no more than the relief setting (or the final pressure that was
 * given), with gas as warm as the method has it. In a solar loop that may boil what leaves is also the liquid of the collectors and of the pipe that boils empty. Immutable.
 *
 * @param beyond the method's vessel less that smallest vessel; negative if it is short; null where the mass balance cannot judge, as
 *     for an open tank or an unknown lowest temperature
 * @param reason why it cannot judge, empty if it can
 */
public record MassBalanceGrade(@Nullable Volume beyond, String reason) implements Serializable {

    private static final Source TO_THE_SETTING =
            Source.computed("mass balance", "vessel that just does not lift the valve");

    static MassBalanceGrade of(Sizing sizing) {
        if (sizing.job().vessel().kind() == VesselKind.OPEN) {
            return new MassBalanceGrade(null, "open tank");
        }
        try {
            boolean mayBoil = sizing.job().loop().stagnation() != null;
            Method balance = mayBoil ? Methods.MASS_BALANCE.withVapourOf(Methods.UFC_3_440_01) : Methods.MASS_BALANCE;
            Sizing smallest = balance.with(FinalPressureRule.setting(TO_THE_SETTING))
                    .with(sizing.method().gasTemperatures())
                    .size(sameStart(sizing));
            return new MassBalanceGrade(sizing.requiredVolume().minus(smallest.requiredVolume()), "");
        } catch (OutOfRangeException | MissingInputException refusal) {
            return new MassBalanceGrade(null, String.valueOf(refusal.getMessage()));
        }
    }

    /** The method's own cold pressure, charge and air; the relief setting as the limit. */
    private static SizingJob sameStart(Sizing sizing) {
        PressureInputs given = sizing.job().pressures();
        PressureInputs start = given.withAtmosphere(sizing.atmosphere())
                .withColdPressure(sizing.coldPressure())
                .withPreCharge(sizing.preCharge());
        return new SizingJob(
                sizing.job().loop(), sizing.job().vessel(), sizing.job().temperatures(), start);
    }

    /**
     * Whether the vessel is too small by the mass balance.
     *
     * @return true if the valve would lift
     */
    public boolean isShort() {
        return beyond != null && beyond.si() < 0;
    }

    /**
     * The grade for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code +12.3 L} or {@code not judged}
     */
    public String text(UnitSystem system) {
        return beyond == null ? "not judged" : beyond.signedText(system);
    }
}
