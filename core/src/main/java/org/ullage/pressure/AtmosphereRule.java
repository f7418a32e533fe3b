package org.ullage.pressure;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The air pressure a method counts with when the caller does not give the site's own. Immutable.
 *
 * @param pressure the method's air pressure
 * @param source where it comes from
 */
public record AtmosphereRule(AbsolutePressure pressure, Source source) implements Serializable {

    /** The standard atmosphere, 101.325 kPa. */
    public static final AtmosphereRule STANDARD =
            new AtmosphereRule(AbsolutePressure.STANDARD_ATMOSPHERE, Units.STANDARD_ATMOSPHERE.source());

    /**
     * The method's air pressure as a step.
     *
     * @return the step
     */
    public Step step() {
        return Step.given(
                "pressure of the air", Term.of("p_a", pressure), "the method's, as the site's was not given", source);
    }

    /**
     * The rule in words.
     *
     * @return such as {@code 1 bar abs}
     */
    @Override
    public String toString() {
        return pressure.text(Units.BAR);
    }
}
