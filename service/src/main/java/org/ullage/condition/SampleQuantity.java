package org.ullage.condition;

import com.fasterxml.jackson.annotation.JsonValue;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/** What is measured in a sample of the fluid. */
public enum SampleQuantity {
    /** Acidity, pH at 25 degC. */
    PH("pH", "", 14, Signs.PLAUSIBLE),
    /** Electrical conductivity at 25 degC. */
    CONDUCTIVITY("conductivity", "uS/cm", 100_000, Signs.PLAUSIBLE),
    /** Reserve alkalinity: 0.1 N hydrochloric acid that brings 10 mL of sample to pH 5.5. */
    RESERVE_ALKALINITY("reserve alkalinity", "mL", 100, Signs.PLAUSIBLE),
    /** Dissolved oxygen. */
    OXYGEN("dissolved oxygen", "mg/L", 50, Signs.PLAUSIBLE),
    /** Glycol by volume, as a refractometer or a density shows it. */
    GLYCOL("glycol concentration", "vol%", 100, Signs.PLAUSIBLE);

    private final String word;
    private final String unit;

    @SuppressWarnings("ImmutableEnumChecker") // a Constant is a record of immutable parts
    private final Constant most;

    SampleQuantity(String word, String unit, double most, Source plausible) {
        this.word = word;
        this.unit = unit;
        this.most = new Constant(word, most, unit.isEmpty() ? "1" : unit, plausible);
    }

    /**
     * Its name for people.
     *
     * @return such as {@code conductivity}
     */
    @JsonValue
    public String word() {
        return word;
    }

    /**
     * The one unit it is given in.
     *
     * @return such as {@code uS/cm}; empty for pH
     */
    public String unit() {
        return unit;
    }

    /**
     * The lowest number an instrument can show for it.
     *
     * @return in {@link #unit()}
     */
    public double least() {
        return 0;
    }

    /**
     * The highest number that is accepted; more is taken for a slip of the unit.
     *
     * @return in {@link #unit()}
     */
    public double most() {
        return most.value();
    }

    String withUnit(String number) {
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
