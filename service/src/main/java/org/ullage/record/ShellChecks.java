package org.ullage.record;

import java.util.List;
import org.ullage.vessel.VesselKind;

/** The outside of a vessel: support and corrosion. */
final class ShellChecks {

    private ShellChecks() {}

    static List<ChecklistItem> of(VesselNote vessel) {
        String name = "Vessel " + PlainText.shortened(vessel.id()) + ": ";
        return List.of(
                new ChecklistItem(
                        name + "look at the support, its fixings and the pipe beside it. " + support(vessel),
                        "A waterlogged vessel weighs its shell and its whole nominal volume of fluid: nothing may sag.",
                        CheckSources.UNIFORM_CODE),
                new ChecklistItem(
                        name + "look for rust, blisters and damp spots on shell, seams and connection" + tapping(vessel)
                                + ".",
                        "Corrosion goes through the thinnest metal first; a dull sound over the whole shell means full of water.",
                        CheckSources.INSPECTION));
    }

    private static String tapping(VesselNote vessel) {
        return vessel.kind() == VesselKind.OPEN ? "" : "; tap it at both ends";
    }

    private static String support(VesselNote vessel) {
        SupportNote support = vessel.support();
        return support == null || support.checkedFor() == null
                ? "The load it was checked for is not recorded: have it checked and record it."
                : "It was checked for " + support.checkedFor().textInBothSystems() + ".";
    }
}
