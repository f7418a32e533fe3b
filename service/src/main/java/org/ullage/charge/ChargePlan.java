package org.ullage.charge;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.ullage.operation.FillPlan;
import org.ullage.pressure.StaticHead;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * What to set on the gas side on the day, what to fill to, and what the gauge should read. The charge of a sizing is meant for one gas
 * temperature; on a cold day the same gas shows less. Immutable; made by {@link ChargeJob#plan()}.
 *
 * <p>At the filling the gas is as warm as the air; with the loop hot it is as warm as the method has it (20 degC throughout unless the
 * method was given gas temperatures of its own). Pressures, absolute, with the charge P_0 at T_0:
 *
 * <pre>
 * to set    P_d = P_0 T_d / T_0
 * fill      P_fill = P_d V_n / (V_n - V_w)
 * hot       P_hot = P_0 (T_h / T_0) V_n / (V_n - V_w - V_e)
 * </pre>
 */
public final class ChargePlan implements Serializable {

    private static final long serialVersionUID = 1L;

    private final ChargeNumbers numbers;

    ChargePlan(ChargeNumbers numbers) {
        this.numbers = numbers;
    }

    /**
     * What was known on the day.
     *
     * @return the job as it was given
     */
    public ChargeJob job() {
        return numbers.job;
    }

    /**
     * The charge the sizing wants.
     *
     * @return at the gas temperature it is meant for, under the air pressure of the sizing
     */
    public ChargeReading wanted() {
        return numbers.wanted;
    }

    /**
     * The same charge as the gauge must show it when it is set.
     *
     * @return at the air temperature of the day, under the air pressure of the place
     */
    public ChargeReading toSet() {
        return numbers.toSet;
    }

    /**
     * Between which pressures the loop may be filled at the water temperature of the day, with the gas as warm as the air.
     *
     * @return the window, at the vessel
     */
    public FillPlan window() {
        return numbers.window;
    }

    /**
     * What to fill to: the pressure that was chosen, or the lowest that keeps the reserve and the cold pressure of the sizing until the
     * loop is coldest.
     *
     * @return gauge pressure at the vessel
     */
    public GaugePressure fillPressure() {
        return gauge(numbers.fill);
    }

    /**
     * Water in the vessel after filling.
     *
     * @return the volume; zero if the loop is filled to no more than the charge
     */
    public Volume waterAfterFilling() {
        return numbers.water;
    }

    /**
     * What the vessel sees with the loop at its highest temperature, in a loop that may boil with what vapour pushes out.
     *
     * @return gauge pressure at the vessel
     */
    public GaugePressure hotPressure() {
        return gauge(numbers.hot);
    }

    /**
     * What the loop's gauge should read after filling.
     *
     * @return the fill pressure less the water column up to the gauge
     */
    public GaugePressure gaugeAfterFilling() {
        return atGauge(fillPressure());
    }

    /**
     * What the loop's gauge should read with the loop at its highest temperature.
     *
     * @return the hot pressure less the water column up to the gauge
     */
    public GaugePressure gaugeWhenHot() {
        return atGauge(hotPressure());
    }

    /**
     * What to do about the charge that was found.
     *
     * @return empty if none was given
     */
    public Optional<FoundCharge> found() {
        return Optional.ofNullable(numbers.found);
    }

    private GaugePressure gauge(AbsolutePressure pressure) {
        return pressure.gauge(numbers.job.sizing().atmosphere());
    }

    private GaugePressure atGauge(GaugePressure atVessel) {
        return atVessel.minus(StaticHead.of(numbers.job.gaugeAbove()));
    }

    /**
     * What the reader of this plan must know about it.
     *
     * @return the warnings, may be empty
     */
    public List<Caution> warnings() {
        return ChargeWarnings.of(numbers);
    }

    /**
     * The dangers of the work, and where local codes and licensed practice decide.
     *
     * @return the cautions, never empty
     */
    public List<Caution> cautions() {
        return ChargeCautions.with(numbers.job.sizing().cautions());
    }

    /**
     * How the plan was reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        return ChargeWorkings.of(this, numbers);
    }

    /**
     * The plan in words, warnings included.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return ChargeWords.of(this, system);
    }
}
