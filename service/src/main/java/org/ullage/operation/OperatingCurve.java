package org.ullage.operation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * Pressure against temperature of a closed loop in use. Immutable.
 *
 * <p>The mass of liquid in loop and vessels stays what it was at the fill, the pipe's volume follows the temperature, and the vessels
 * hold what their gas lets in:
 *
 * <pre>
 * V_s / v_1 + m_1 = V_s (1 + 3 alpha (T - T_1)) (1 + k (p - p_1)) / v(T, p) + m(p)
 * V_w(p) = sum of V_k (1 - p_0k / p_k)
 * </pre>
 *
 * <p>V_s contents at the fill temperature T_1; p at the reference point, counted for the whole loop; v the fluid's specific volume; m
 * the water in the vessels, as warm as {@link VesselWater} says; k the stretch of the pipe wall, none unless a {@link PipeWall} is
 * given. One vessel, or several of one charge and level, answer in closed form; others by a bracketed search. The gas keeps its
 * temperature, and pump, make-up and relief valve do nothing on the way.
 *
 * <pre>{@code
 * OperatingCurve curve = LoopInUse.of(loop, VesselBank.of(vessel), new Reading(bar(1.3), celsius(20))).curve();
 * GaugePressure hot = curve.pressure(celsius(70));
 * }</pre>
 */
public final class OperatingCurve implements Serializable {

    private static final long serialVersionUID = 1L;

    private final LoopInUse inUse;
    private final OperatingNumbers numbers;

    OperatingCurve(LoopInUse inUse) {
        BankNumbers vessels = inUse.bank().numbers();
        this.inUse = inUse;
        this.numbers = new OperatingNumbers(new LoopBalance(inUse, vessels), vessels);
    }

    /**
     * What the curve was made from.
     *
     * @return loop, vessels, fill and conventions
     */
    public LoopInUse inUse() {
        return inUse;
    }

    /**
     * The loop after one vessel has been shut off with the water that is in it.
     *
     * @param vessel its name
     * @param when loop temperature at that moment
     * @return the curve of the rest
     * @throws OutOfRangeException if there is no such vessel, it is the only one or the loop has no pressure then
     */
    public OperatingCurve isolating(String vessel, Temperature when) {
        return inUse.leftAt(inUse.bank().without(vessel), new Reading(pressure(when), when))
                .curve();
    }

    /**
     * The loop at a temperature.
     *
     * @param temperature mean temperature of the fluid in the loop
     * @return pressure, state, water in the vessels
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public OperatingPoint at(Temperature temperature) {
        return OperatingPoints.of(this, temperature);
    }

    /**
     * The pressure at a temperature.
     *
     * @param temperature mean temperature of the fluid in the loop
     * @return pressure at the reference point
     * @throws OutOfRangeException if no pressure can be given there; {@link #at} tells the state instead
     */
    public GaugePressure pressure(Temperature temperature) {
        return gauge(pressureSi(temperature.si()));
    }

    /**
     * The pressure at a temperature on bare SI numbers, the path for calculations: no allocation in closed form.
     *
     * @param kelvins mean temperature of the fluid in the loop
     * @return absolute pressure at the reference point, pascals
     * @throws OutOfRangeException if no pressure can be given there
     */
    public double pressureSi(double kelvins) {
        double pascals = numbers.pressure(kelvins);
        if (!OperatingNumbers.isPressure(pascals)) {
            throw OperatingPoints.refusal(this, kelvins);
        }
        return pascals;
    }

    /**
     * Points of the curve, evenly spaced, for a plot.
     *
     * @param from first temperature
     * @param to last temperature
     * @param steps number of steps, 1 or more; there is one point more
     * @return the points
     * @throws OutOfRangeException if there is no step or the fluid's model does not answer
     */
    public List<OperatingPoint> sample(Temperature from, Temperature to, int steps) {
        if (steps < 1) {
            throw new OutOfRangeException("steps of a curve", Integer.toString(steps), "1 or more", "ask for more");
        }
        List<OperatingPoint> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double kelvins = from.si() + (to.si() - from.si()) * i / steps;
            points.add(at(Temperature.ofSi(kelvins)));
        }
        return List.copyOf(points);
    }

    /**
     * What the reader of the curve must know.
     *
     * @return assumptions and dangers, never empty
     */
    public List<Caution> cautions() {
        return OperatingCautions.of(this);
    }

    /**
     * How the pressure at one temperature was reached, step by step.
     *
     * @param temperature where it can be given
     * @return the steps with formulas, values and sources
     * @throws OutOfRangeException if no pressure can be given there
     */
    public Workings workings(Temperature temperature) {
        return OperatingWorkings.of(this, temperature);
    }

    OperatingNumbers numbers() {
        return numbers;
    }

    GaugePressure gauge(double pascals) {
        return AbsolutePressure.ofSi(pascals).gauge(inUse.bank().atmosphere());
    }
}
