package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * The section modulus of a beam or tube: bending moment over the stress of the outermost fibre. Immutable.
 */
public final class SectionModulus extends AdditiveQuantity<SectionModulus, SectionModulus> {

    private static final long serialVersionUID = 1L;

    private static final Kind<SectionModulus, SectionModulus> KIND = new Kind<>(
            "section modulus",
            Kind.Range.POSITIVE,
            SectionModulus::new,
            Units.SECTION_CUBIC_CENTIMETRE,
            Units.SECTION_CUBIC_INCH,
            List.of(Units.SECTION_CUBIC_METRE, Units.SECTION_CUBIC_CENTIMETRE, Units.SECTION_CUBIC_INCH));

    @JsonIgnore
    private SectionModulus(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of cubic centimetres.
     *
     * @param number the number of cubic centimetres
     * @return the section modulus
     * @throws OutOfRangeException if the number is not allowed for a section modulus
     */
    public static SectionModulus cubicCentimetres(double number) {
        return KIND.of(number, Units.SECTION_CUBIC_CENTIMETRE);
    }

    /**
     * Makes one from a number of cubic inches.
     *
     * @param number the number of cubic inches
     * @return the section modulus
     * @throws OutOfRangeException if the number is not allowed for a section modulus
     */
    public static SectionModulus cubicInches(double number) {
        return KIND.of(number, Units.SECTION_CUBIC_INCH);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the section modulus
     * @throws OutOfRangeException if the number is not allowed for a section modulus
     */
    public static SectionModulus of(double number, Unit<SectionModulus> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#SECTION_CUBIC_METRE}.
     *
     * @param si the SI value
     * @return the section modulus
     * @throws OutOfRangeException if the value is not allowed for a section modulus
     */
    public static SectionModulus ofSi(double si) {
        return new SectionModulus(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 0.202 in3}
     * @return the section modulus
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a section modulus
     */
    @JsonCreator
    public static SectionModulus parse(String text) {
        return KIND.parse(text);
    }

    /**
     * The bending stress of the outermost fibre.
     *
     * @param moment bending moment
     * @return moment over section modulus
     * @throws OutOfRangeException if the section is so small that the stress is not finite
     */
    public Stress stress(Moment moment) {
        return Stress.ofSi(moment.si() / si());
    }

    @Override
    Kind<SectionModulus, SectionModulus> kind() {
        return KIND;
    }

    @Override
    SectionModulus make(double si) {
        return new SectionModulus(si);
    }
}
