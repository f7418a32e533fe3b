package org.ullage.record;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * What stands on a tag beside the vessel: at most 14 lines of at most 40 places, with the charge as it was last set. Immutable.
 *
 * @param commissioning the note it is taken from
 * @param vessel the vessel
 * @param charge charge as it was last set, or null if not recorded
 * @param gasTemperature temperature of the gas then, or null if not recorded
 * @param date the day of that, or of the commissioning
 * @param by who did it
 */
public record TagNote(
        CommissioningNote commissioning,
        VesselNote vessel,
        @Nullable GaugePressure charge,
        @Nullable Temperature gasTemperature,
        RecordDate date,
        String by)
        implements Serializable {

    private static final int WIDTH = 40;

    /**
     * The tag of a vessel.
     *
     * @param book the record
     * @param vessel name of a vessel that is there now
     * @return the tag
     * @throws OutOfRangeException if there is no such vessel
     */
    public static TagNote of(ServiceBook book, String vessel) {
        ChargeHistory.Setting set = ChargeHistory.of(book, vessel, AbsolutePressure.STANDARD_ATMOSPHERE)
                .lastSet();
        CommissioningNote note = book.commissioning();
        VesselNote there = book.vesselsNow().stream()
                .filter(candidate -> candidate.id().equals(vessel))
                .findFirst()
                .orElseThrow();
        return set == null
                ? new TagNote(note, there, null, null, note.date(), note.by())
                : new TagNote(note, there, set.charge(), set.gas(), set.date(), set.by());
    }

    /**
     * The tag.
     *
     * @param system metric or inch-pound
     * @return lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        FillNote fill = commissioning.fill();
        List<String> lines = new ArrayList<>();
        lines.add(commissioning.installation());
        lines.add("vessel: " + vessel.id());
        lines.add("  " + kind() + ", " + text(vessel.nominal(), system));
        lines.add("gas charge: " + text(charge, system));
        lines.add("  with the gas at: " + text(gasTemperature, system));
        lines.add("fill pressure: " + text(fill == null ? null : fill.pressure(), system));
        lines.add("  with the water at: " + text(fill == null ? null : fill.waterTemperature(), system));
        lines.add("relief setting: " + text(commissioning.reliefSetting(), system));
        lines.add("static head: " + text(commissioning.staticHead(), system));
        lines.add("set on " + date);
        lines.add("by " + by);
        lines.addAll(PlainText.wrapped("check every year with the water side isolated and drained to zero", WIDTH));
        StringBuilder tag = new StringBuilder();
        lines.forEach(line -> tag.append(indent(line))
                .append(PlainText.cut(line, WIDTH - indent(line).length()))
                .append('\n'));
        return tag.toString();
    }

    private String kind() {
        return vessel.kind() == null
                ? "kind " + RecordLines.NOT_RECORDED
                : vessel.kind().word();
    }

    private static String indent(String line) {
        return line.startsWith("  ") ? "  " : "";
    }

    private static String text(@Nullable Quantity<?, ?> value, UnitSystem system) {
        return value == null ? RecordLines.NOT_RECORDED : value.text(system);
    }
}
