package org.ullage.loop;

import java.io.Serializable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * What of a solar loop may turn to vapour when it stands still in the sun, pushing as much liquid into the vessel. Immutable.
 *
 * @param collectors fluid in the collectors, zero or more
 * @param pipe fluid in the pipes at or above the collectors, and in those below that the vapour reaches, zero or more
 */
public record StagnationContents(Volume collectors, Volume pipe) implements Serializable {

    /**
     * Checks both.
     *
     * @param collectors fluid in the collectors
     * @param pipe fluid in the pipes that may boil empty
     * @throws OutOfRangeException if one is negative
     */
    public StagnationContents {
        requireNotNegative("collector contents", collectors);
        requireNotNegative("contents of pipes that may boil empty", pipe);
    }

    private static void requireNotNegative(String name, Volume volume) {
        if (volume.si() < 0) {
            throw new OutOfRangeException(
                    name,
                    volume.textInBothSystems(),
                    "zero or more",
                    "give what one collector holds, times their number");
        }
    }
}
