package org.ullage.operation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.TextTable;

/**
 * A pressure at which one of several vessels begins to take water, or takes no more. Immutable.
 *
 * @param pressure at the reference point
 * @param vessel its name
 * @param kind what happens
 * @param water water in all vessels at that pressure
 */
public record VesselEvent(GaugePressure pressure, String vessel, Kind kind, Volume water) implements Serializable {

    private static final int DIGITS = 4;

    /** What can happen to a vessel as the pressure rises. */
    public enum Kind {
        /** The pressure has reached its charge. */
        BEGINS("begins to take water"),
        /** Its membrane is at its stop. */
        AT_STOP("membrane at its stop");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * The event in words.
         *
         * @return such as {@code begins to take water}
         */
        @Override
        public String toString() {
            return words;
        }
    }

    static List<VesselEvent> of(VesselBank bank) {
        List<VesselEvent> events = new ArrayList<>();
        BankNumbers all = bank.numbers();
        for (InstalledVessel vessel : bank.vessels()) {
            GasGroup group = vessel.group(bank.atmosphere());
            if (group.charge() > 0 && group.starts() > 0) {
                events.add(event(bank, all, vessel, Kind.BEGINS, group.starts()));
                if (group.limitShare() < 1) {
                    events.add(event(bank, all, vessel, Kind.AT_STOP, group.stops()));
                }
            }
        }
        events.sort(Comparator.comparing(VesselEvent::pressure).thenComparing(VesselEvent::vessel));
        return List.copyOf(events);
    }

    private static VesselEvent event(
            VesselBank bank, BankNumbers all, InstalledVessel vessel, Kind kind, double pascals) {
        return new VesselEvent(
                AbsolutePressure.ofSi(pascals).gauge(bank.atmosphere()),
                vessel.name(),
                kind,
                Volume.ofSi(all.water(pascals)));
    }

    static String table(List<VesselEvent> events, UnitSystem system) {
        TextTable table = new TextTable(List.of("pressure", "vessel", "event", "water in all vessels"));
        events.forEach(event -> table.add(List.of(
                event.pressure.text(system, DIGITS),
                event.vessel,
                event.kind.toString(),
                event.water.text(system, DIGITS))));
        return table.text();
    }
}
