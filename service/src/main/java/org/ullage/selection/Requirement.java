package org.ullage.selection;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * What the vessels must do together, and each of them alone. Immutable; null means not given.
 *
 * <p>With nominal volume V_n and acceptance V_x required together, equal charges let every vessel fill to the same share V_x/V_n of its
 * nominal volume by the final pressure, or to its acceptance limit V_a if that comes first. So a vessel of nominal volume V counts with
 * min(V, V_a V_n/V_x), and the vessels are enough when these add up to V_n; then nominal volumes add up to at least V_n and acceptance
 * limits to at least V_x as well. With one of the two required, nominal volumes or acceptance limits alone must add up to it.
 *
 * @param nominal nominal volume by the gas law, in all
 * @param acceptance water to take in, in all
 * @param rating gauge pressure each vessel must be rated for, that is the relief setting
 * @param temperature temperature each vessel must be rated for
 * @param kinds kinds of vessel that may be used
 */
public record Requirement(
        @Nullable Volume nominal,
        @Nullable Volume acceptance,
        @Nullable GaugePressure rating,
        @Nullable Temperature temperature,
        Set<VesselKind> kinds)
        implements Serializable {

    /**
     * Checks the volumes and copies the kinds.
     *
     * @param nominal nominal volume, at least 1 mm3, or null
     * @param acceptance water to take in, at least 1 mm3, or null
     * @param rating least rating, or null
     * @param temperature least rated temperature, or null
     * @param kinds at least one
     * @throws MissingInputException if neither volume or no kind is given
     * @throws OutOfRangeException if a volume is not above zero
     */
    public Requirement {
        if (nominal == null && acceptance == null) {
            throw new MissingInputException("required volume", "a selection", "give nominal or acceptance volume");
        }
        if (kinds.isEmpty()) {
            throw new MissingInputException("kind of vessel", "a selection", "allow at least one kind");
        }
        kinds = Collections.unmodifiableSet(EnumSet.copyOf(kinds));
        requireAboveZero("required nominal volume", nominal);
        requireAboveZero("required acceptance volume", acceptance);
    }

    private static void requireAboveZero(String name, @Nullable Volume volume) {
        if (volume != null && (volume.si() <= 0 || Exact.requiredVolume(volume.si()) == 0)) {
            throw new OutOfRangeException(name, volume.textInBothSystems(), "above zero", "check the sizing");
        }
    }

    Requirement withRating(@Nullable GaugePressure least) {
        return new Requirement(nominal, acceptance, least, temperature, kinds);
    }

    Requirement withTemperature(@Nullable Temperature least) {
        return new Requirement(nominal, acceptance, rating, least, kinds);
    }

    Requirement withKinds(Set<VesselKind> allowed) {
        return new Requirement(nominal, acceptance, rating, temperature, allowed);
    }
}
