package org.ullage.charge;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * One charge read twice: where it was set, and at another gas temperature or under another air pressure. Immutable.
 *
 * @param set the charge as it was set
 * @param read the same gas as the gauge shows it later
 */
public record ChargeAtTemperature(ChargeReading set, ChargeReading read) implements Serializable {

    /**
     * Follows a charge to another gas temperature.
     *
     * @param set the charge as it was set
     * @param gas temperature of the gas when it is read
     * @return both readings
     */
    public static ChargeAtTemperature of(ChargeReading set, Temperature gas) {
        return of(set, gas, set.atmosphere());
    }

    /**
     * Follows a charge to another gas temperature and air pressure.
     *
     * @param set the charge as it was set
     * @param gas temperature of the gas when it is read
     * @param air pressure of the air where it is read
     * @return both readings
     */
    public static ChargeAtTemperature of(ChargeReading set, Temperature gas, AbsolutePressure air) {
        return new ChargeAtTemperature(set, set.at(gas).under(air));
    }

    /**
     * How far the gauge moved, without any gas added or lost.
     *
     * @return read less set
     */
    public PressureDifference change() {
        return read.pressure().minus(set.pressure());
    }

    /**
     * The change as a share of the gauge pressure that was set.
     *
     * @return such as 0.069 for 6.9 %
     * @throws OutOfRangeException if the charge was set to zero on the gauge
     */
    public double changeOfGauge() {
        return change().dividedBy(PressureDifference.ofSi(set.pressure().si()));
    }

    /**
     * How the reading was reached.
     *
     * @return one step
     */
    public Workings workings() {
        return new Workings("Gas charge at another temperature", List.of(step("p_1", "T_1", "p_2", "T_2")));
    }

    Step step(String from, String fromTemperature, String to, String toTemperature) {
        String air = "p_a" + from.substring(1);
        String otherAir = "p_a" + to.substring(1);
        return new Step(
                "gauge reading of the charge with the gas at "
                        + read.gas().text(Units.CELSIUS) + " ("
                        + read.gas().text(Units.FAHRENHEIT) + ")",
                "(" + from + " + " + air + ") * " + toTemperature + " / " + fromTemperature + " - " + otherAir,
                List.of(
                        Term.of(from, set.pressure()),
                        Term.of(air, set.atmosphere()),
                        Term.in(Units.KELVIN, fromTemperature, set.gas()),
                        Term.in(Units.KELVIN, toTemperature, read.gas()),
                        Term.of(otherAir, read.atmosphere())),
                Term.of(to, read.pressure()),
                ChargeReading.SOURCE);
    }

    /**
     * Both readings in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return set.text(system) + " reads " + read.text(system) + " (" + change().signedText(system) + ")";
    }
}
