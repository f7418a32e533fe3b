package org.ullage.charge;

import java.io.Serializable;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * A charge that was found against the one that is wanted, both with the gas as warm as it was found. A charge from the works is only a
 * transport value and is nearly always to be set again. Immutable.
 *
 * @param found the charge as it was read, water side empty
 * @param wanted what it should have read then
 * @param acceptance what the found charge changes in the water the vessel takes in between cold and final pressure; negative for a
 *     loss
 * @param tolerance how far off it may be
 */
public record FoundCharge(ChargeReading found, ChargeReading wanted, Volume acceptance, GaugeTolerance tolerance)
        implements Serializable {

    private static final int DIGITS = 3;

    /**
     * Compares a charge with the one that is wanted.
     *
     * @param found the charge as it was read, water side empty
     * @param wanted the charge that is wanted, at the gas temperature it is meant for
     * @param vessel the vessel between cold and final pressure
     * @param tolerance how far off it may be
     * @return the comparison
     */
    public static FoundCharge of(
            ChargeReading found, ChargeReading wanted, VesselAcceptance vessel, GaugeTolerance tolerance) {
        return new FoundCharge(
                found,
                wanted.at(found.gas()).under(found.atmosphere()),
                vessel.change(wanted.absolute(), found.at(wanted.gas()).absolute()),
                tolerance);
    }

    /**
     * What is missing.
     *
     * @return wanted less found: to add if positive, to bleed if negative
     */
    public PressureDifference correction() {
        return wanted.pressure().minus(found.pressure());
    }

    /**
     * What to do.
     *
     * @return leave it if it is within the tolerance, else add or bleed
     */
    public ChargeAction action() {
        if (tolerance.holds(correction())) {
            return ChargeAction.LEAVE;
        }
        return correction().si() > 0 ? ChargeAction.ADD : ChargeAction.BLEED;
    }

    /**
     * What happens if it is left as it is.
     *
     * @return a sentence
     */
    public String consequence() {
        return switch (action()) {
            case LEAVE -> "It may stay until the vessel is open for another reason.";
            case ADD ->
                found.pressure().si() <= 0
                        ? "The charge is gone: the vessel fills with water, the pressure swings from the cold fill to the relief"
                                + " setting, and air is drawn in at the top when the loop cools. If water comes out of the gas"
                                + " valve, the membrane is torn."
                        : "The vessel is part full of water already when the loop is cold: less room is left, the pressure swings"
                                + " more, the relief valve may lift and the loop then lacks water when cold.";
            case BLEED ->
                "The vessel holds too little water, or none, when the loop is cold: the pressure falls at once when the loop"
                        + " shrinks or loses water, and air may be drawn in at the top.";
        };
    }

    /**
     * The comparison in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        String amount = correction().times(Math.signum(correction().si())).text(system, DIGITS);
        String what = switch (action()) {
            case LEAVE -> "leave it, it is within " + tolerance.text(system);
            case ADD -> "add " + amount;
            case BLEED -> "bleed " + amount;
        };
        return "found " + found.text(system) + ", wanted " + wanted.pressure().text(system) + ": " + what
                + "; as found the vessel takes in " + litres(system) + ". " + consequence();
    }

    private String litres(UnitSystem system) {
        return acceptance.times(Math.signum(acceptance.si())).text(system, DIGITS)
                + (acceptance.si() < 0 ? " less" : " more");
    }
}
