package org.ullage.operation;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * What a pipe wall is made of, as far as locked-in liquid feels it. Immutable.
 *
 * @param name in words
 * @param modulus Young's modulus E, above zero
 * @param linearExpansion linear thermal expansion coefficient
 * @param poisson Poisson's ratio nu, from 0 to 0.5, a pure number
 * @param source where the values come from
 */
public record WallMaterial(String name, Stress modulus, LinearExpansion linearExpansion, double poisson, Source source)
        implements Serializable {

    private static final Source TRADE_ARTICLE = Source.secondHand(
            "modulus and volumetric expansion of steel, 2e5 MPa and 36e-6/K",
            "room temperature",
            "an engineers' answer page on trapped liquid; Poisson's ratio from memory");

    private static final Source REMEMBERED_COPPER =
            Source.fromMemory("handbook values of copper tube", "room temperature");

    /** Steel: 200 GPa, 12e-6 per kelvin, 0.3. */
    public static final WallMaterial STEEL = of("steel", 200e3, 12e-6, 0.3, TRADE_ARTICLE);

    /** Copper: 117 GPa, 16.6e-6 per kelvin, 0.34. */
    public static final WallMaterial COPPER = of("copper", 117e3, 16.6e-6, 0.34, REMEMBERED_COPPER);

    /**
     * Checks the values.
     *
     * @param name in words
     * @param modulus above zero
     * @param linearExpansion linear thermal expansion coefficient
     * @param poisson from 0 to 0.5
     * @param source where the values come from
     * @throws OutOfRangeException if modulus or Poisson's ratio is out of range
     */
    public WallMaterial {
        if (modulus.si() <= 0) {
            throw new OutOfRangeException(
                    "modulus of " + name, modulus.text(UnitSystem.SI), "above zero", "take it from a handbook");
        }
        if (!(poisson >= 0 && 2 * poisson <= 1)) {
            throw new OutOfRangeException(
                    "Poisson's ratio of " + name, Double.toString(poisson), "from 0 to 0.5", "take it from a handbook");
        }
    }

    /**
     * Cross-linked polyethylene, which softens with temperature: indicative, for a modulus under load falls further with time.
     *
     * @param temperature of the wall, 10 to 80 degC
     * @return the material at that temperature
     * @throws OutOfRangeException if the temperature is outside the values known
     */
    public static WallMaterial crossLinkedPolyethylene(Temperature temperature) {
        return PolyethyleneModulus.at(temperature);
    }

    static WallMaterial of(String name, double megapascals, double alpha, double poisson, Source source) {
        return new WallMaterial(
                name, Stress.megapascals(megapascals), LinearExpansion.perKelvin(alpha), poisson, source);
    }
}
