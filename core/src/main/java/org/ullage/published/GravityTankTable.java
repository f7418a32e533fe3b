package org.ullage.published;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * Least plain closed tanks of gravity systems by their radiation, Michigan R 408.4272 table 272A: two-pipe gravity circulation, average
 * 170 degF, cast-iron column radiation at 150 Btu/h for each square foot of equivalent direct radiation. Radiation between two rows takes
 * the next larger row, as the table's "up to" says; above 2400 ft2 one gallon is added for each further 33 ft2.
 */
public final class GravityTankTable {

    /** Where the table comes from. */
    public static final Source SOURCE = Source.published("Michigan Administrative Code R 408.4272", "table 272A");

    private static final List<Row> ROWS = List.of(
            row(350, 1, 18, SOURCE),
            row(450, 1, 21, SOURCE),
            row(650, 1, 24, SOURCE),
            row(900, 1, 30, SOURCE),
            row(1100, 1, 35, SOURCE),
            row(1400, 1, 40, SOURCE),
            row(1600, 2, 30, SOURCE),
            row(1800, 2, 30, SOURCE),
            row(2000, 2, 35, SOURCE),
            row(2400, 2, 40, SOURCE));

    private static final Constant AREA_PER_GALLON = new Constant("A_gal", 33, "ft2/gal", SOURCE);

    private GravityTankTable() {}

    private record Row(Constant upTo, Tanks tanks) {}

    /**
     * What the table asks for.
     *
     * @param count number of tanks
     * @param each volume of each
     * @param beyond volume added for radiation above the last row, zero within the table
     */
    public record Tanks(int count, Volume each, Volume beyond) implements Serializable {

        /**
         * All of it.
         *
         * @return the sum
         */
        public Volume total() {
            return each.times(count).plus(beyond);
        }

        /**
         * In words.
         *
         * @return such as {@code 2 x 30 gal}
         */
        @Override
        public String toString() {
            String tanks = (count == 1 ? "" : count + " x ") + each.text(UnitSystem.IP);
            return beyond.si() == 0 ? tanks : tanks + " + " + beyond.text(UnitSystem.IP);
        }
    }

    private static Row row(double squareFeet, int count, double gallons, Source source) {
        return new Row(
                new Constant("A", squareFeet, "ft2", source),
                new Tanks(count, Volume.gallons(gallons), Volume.gallons(0)));
    }

    /**
     * Looks the tanks up.
     *
     * @param squareFeet equivalent direct radiation in square feet, above zero
     * @return number and volume of the tanks
     * @throws OutOfRangeException if the radiation is not above zero and finite
     */
    public static Tanks tanksFor(double squareFeet) {
        OpenTankByRadiation.requireRadiation(squareFeet);
        Row last = ROWS.get(ROWS.size() - 1);
        return ROWS.stream()
                .filter(row -> squareFeet <= row.upTo().value())
                .map(Row::tanks)
                .findFirst()
                .orElseGet(() -> beyond(last, squareFeet));
    }

    private static Tanks beyond(Row last, double squareFeet) {
        double gallons = (squareFeet - last.upTo().value()) / AREA_PER_GALLON.value();
        return new Tanks(last.tanks().count(), last.tanks().each(), Volume.gallons(gallons));
    }
}
