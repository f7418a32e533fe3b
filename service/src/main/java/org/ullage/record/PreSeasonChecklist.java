package org.ullage.record;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/**
 * What to do at a loop before the season, made from its record: it asks for what the record does not know and compares with what
 * it does. Quantities stand in
 * both unit systems. Immutable.
 *
 * @param installation name of the installation
 * @param items what to do, in order
 */
public record PreSeasonChecklist(String installation, List<ChecklistItem> items) implements Serializable {

    private static final int WIDTH = 100;

    /**
     * Copies the items.
     *
     * @param installation name of the installation
     * @param items what to do, in order
     */
    public PreSeasonChecklist {
        items = List.copyOf(items);
    }

    /**
     * The list for a loop.
     *
     * @param book its record
     * @param ambient pressure of the air at the site
     * @param gasToday temperature of the shells today, or null to compare at 20 degC alone
     * @return the list
     * @throws OutOfRangeException if a recorded charge is at or below vacuum
     */
    public static PreSeasonChecklist of(ServiceBook book, AbsolutePressure ambient, @Nullable Temperature gasToday) {
        List<ChecklistItem> items = new ArrayList<>();
        items.add(new ChecklistItem(
                "Let the loop cool, stop heat generators and pumps, note cold pressure and temperature before anything is touched.",
                "Hot water scalds, and the reading on arrival is gone once a valve was turned. Local codes, the instructions on site and"
                        + " licensed practice come before this list.",
                CheckSources.USUAL_CARE));
        for (VesselNote vessel : book.vesselsNow()) {
            if (vessel.kind() == VesselKind.OPEN || vessel.kind() == VesselKind.PLAIN_STEEL) {
                items.addAll(TankChecks.of(vessel));
            } else {
                items.addAll(new VesselChecks(book, vessel, ambient, gasToday).items());
            }
            items.addAll(ShellChecks.of(vessel));
        }
        items.addAll(LoopChecks.of(book));
        return new PreSeasonChecklist(book.commissioning().installation(), items);
    }

    /**
     * The list for people, with boxes to tick.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        lines(text, "", "Before the season: " + installation);
        items.forEach(item -> {
            lines(text, "[ ] ", item.text());
            lines(text, "    ", item.why() + " " + item.source());
        });
        return text.toString();
    }

    private static void lines(StringBuilder text, String before, String content) {
        String margin = before;
        for (String line : PlainText.wrapped(content, WIDTH - before.length())) {
            text.append(margin).append(line).append('\n');
            margin = " ".repeat(before.length());
        }
    }
}
