package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/** Walks a book and gathers the charges of one vessel, a new stretch after each setting. A replaced vessel begins anew. */
final class ChargeHistory {

    private final String vessel;
    private final AbsolutePressure ambient;
    private final List<ChargePoint> points = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private int stretch;
    private @Nullable Setting lastSet;

    /** A charge as it was set. */
    record Setting(GaugePressure charge, @Nullable Temperature gas, RecordDate date, String by) {}

    private ChargeHistory(String vessel, AbsolutePressure ambient) {
        this.vessel = vessel;
        this.ambient = ambient;
    }

    static ChargeHistory of(ServiceBook book, String vessel, AbsolutePressure ambient) {
        requireThere(book, vessel);
        ChargeHistory history = new ChargeHistory(vessel, ambient);
        CommissioningNote begin = book.commissioning();
        begin.vessels().stream()
                .filter(note -> note.id().equals(vessel))
                .forEach(note -> history.installed(note, begin.date(), begin.by()));
        book.visits().forEach(history::visited);
        return history;
    }

    private static void requireThere(ServiceBook book, String vessel) {
        List<String> there = book.vesselsNow().stream().map(VesselNote::id).toList();
        if (!there.contains(vessel)) {
            throw new OutOfRangeException(
                    "vessel",
                    PlainText.quoted(vessel),
                    "one of " + PlainText.of(String.join(", ", there)),
                    "write the name as the record has it");
        }
    }

    List<ChargePoint> points() {
        return points;
    }

    List<LeftOut> leftOut() {
        return leftOut;
    }

    @Nullable
    Setting lastSet() {
        return lastSet;
    }

    private void installed(VesselNote note, RecordDate date, String by) {
        ChargeNote charge = note.charge();
        points.clear();
        leftOut.clear();
        stretch = 0;
        lastSet = null;
        if (charge == null || charge.set() == null) {
            leftOut.add(new LeftOut(date, "the charge as set is not recorded"));
        } else {
            set(charge.set(), charge.gasTemperature(), date, by);
        }
    }

    private void visited(VisitRecord visit) {
        boolean sameName = false;
        for (Replacement replacement : visit.replacements()) {
            if (replacement.fitted().id().equals(vessel)) {
                installed(replacement.fitted(), visit.date(), visit.by());
                sameName |= replacement.vessel().equals(vessel);
            }
        }
        // A check at that visit was made on the vessel that went.
        if (!sameName) {
            visit.charges().stream()
                    .filter(check -> check.vessel().equals(vessel))
                    .forEach(check -> checked(check, visit));
        }
    }

    private void checked(ChargeCheck check, VisitRecord visit) {
        boolean atZero = Boolean.TRUE.equals(check.waterSideAtZero());
        if (!atZero) {
            leftOut.add(new LeftOut(
                    visit.date(),
                    check.waterSideAtZero() == null
                            ? "it is not said whether the water side was at zero"
                            : "read under water pressure, which is not the charge"));
        } else if (check.found() != null) {
            add(check.found(), check.gasTemperature(), visit.date(), false);
        }
        if (check.left() != null) {
            // Whatever was known before, the charge is another one now.
            stretch++;
            if (atZero) {
                set(check.left(), check.gasTemperature(), visit.date(), visit.by());
            }
        }
    }

    private void set(GaugePressure charge, @Nullable Temperature gas, RecordDate date, String by) {
        lastSet = new Setting(charge, gas, date, by);
        add(charge, gas, date, true);
    }

    private void add(GaugePressure charge, @Nullable Temperature gas, RecordDate date, boolean asLeft) {
        if (gas == null) {
            leftOut.add(new LeftOut(date, "the temperature of the gas is not recorded"));
            return;
        }
        AbsolutePressure corrected = ChargeCorrection.absolute(charge, gas, ChargeCorrection.REFERENCE, ambient);
        points.add(new ChargePoint(date, charge, gas, corrected, asLeft, stretch));
    }
}
