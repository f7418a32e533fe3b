package org.ullage.record;

import java.util.List;
import org.ullage.vessel.VesselKind;

/** What to look at on a tank without a membrane. */
final class TankChecks {

    private TankChecks() {}

    static List<ChecklistItem> of(VesselNote tank) {
        String name = "Tank " + PlainText.shortened(tank.id()) + ": ";
        return tank.kind() == VesselKind.OPEN
                ? List.of(new ChecklistItem(
                        name
                                + "look at the water level cold, the overflow and the vent pipe; move the float valve by hand.",
                        "A tank that overflows hot was filled too high cold; one that is empty draws in air.",
                        CheckSources.JUDGEMENT))
                : List.of(
                        new ChecklistItem(
                                name
                                        + "look at the gauge glass; if the tank is full, isolate it, drain it and let air in.",
                                "Water dissolves the air cushion and carries it to the vents; without a cushion the relief valve lifts.",
                                CheckSources.INSPECTION),
                        new ChecklistItem(
                                name
                                        + "look that it can be drained without emptying the system and that no automatic vent sits on it.",
                                "The cushion is let in again through the drain; a vent would let it out.",
                                CheckSources.STATE_RULE));
    }
}
