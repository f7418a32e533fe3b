package org.ullage.loop;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.LinearExpansion;

/**
 * What the pipes and the rest of the water side are made of, as far as their growth with temperature matters. Immutable.
 *
 * @param name in words
 * @param linearExpansion the linear thermal expansion coefficient
 * @param source where the coefficient comes from
 */
public record PipeMaterial(String name, LinearExpansion linearExpansion, Source source) implements Serializable {

    private static final Source ASHRAE_PIPE = Source.secondHand(
            "ASHRAE Handbook, HVAC Systems and Equipment",
            "2000, ch. 12, symbols of eq. 14",
            "quoted in two project calculation sheets");

    /** Steel: 6.5e-6 per Fahrenheit degree, which is 11.7e-6 per kelvin. */
    public static final PipeMaterial STEEL =
            new PipeMaterial("steel", LinearExpansion.perFahrenheitDegree(6.5e-6), ASHRAE_PIPE);

    /** Copper: 9.5e-6 per Fahrenheit degree, which is 17.1e-6 per kelvin. */
    public static final PipeMaterial COPPER =
            new PipeMaterial("copper", LinearExpansion.perFahrenheitDegree(9.5e-6), ASHRAE_PIPE);

    /** Taken as rigid, which gives no pipe credit: the safe side, and the right choice for plastic pipe. */
    public static final PipeMaterial RIGID =
            new PipeMaterial("none (taken as rigid)", LinearExpansion.perKelvin(0), Source.given());
}
