package org.ullage.loop;

import java.util.List;
import java.util.Map;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/**
 * Heat that a square foot of equivalent direct radiation (EDR) gives off, against the average water temperature, in a room at 70
 * degF. Straight lines between the rows of the table.
 */
public final class RadiatorEmission {

    private static final List<Row> ROWS = read(CitedTable.read(Loop.class, "radiator-emission.tsv"));

    private RadiatorEmission() {}

    private record Row(Temperature water, Power emission, Source source) {}

    private static List<Row> read(CitedTable table) {
        return table.rows().stream().map(row -> row(row, table)).toList();
    }

    private static Row row(Map<String, String> row, CitedTable table) {
        return new Row(
                Temperature.parse(row.get("water") + " degF"),
                Power.parse(row.get("emission") + " Btu/h"),
                table.source(row.getOrDefault("mark", "")));
    }

    /**
     * Heat given off by one square foot EDR.
     *
     * @param averageWater average of flow and return, within the table
     * @return the heat
     * @throws OutOfRangeException if the temperature is outside the table
     */
    public static Power ofOneSquareFoot(Temperature averageWater) {
        Row above = ROWS.get(indexAbove(averageWater));
        Row below = ROWS.get(indexAbove(averageWater) - 1);
        double part = (averageWater.si() - below.water.si()) / (above.water.si() - below.water.si());
        return below.emission.plus(above.emission.minus(below.emission).times(part));
    }

    /**
     * The rating that gives an output.
     *
     * @param output heat output, above zero
     * @param averageWater average of flow and return, within the table
     * @return square feet EDR
     * @throws OutOfRangeException if the output is zero or negative, or the temperature outside the table
     */
    public static double squareFeetEdr(Power output, Temperature averageWater) {
        Amount.of(output);
        return output.dividedBy(ofOneSquareFoot(averageWater));
    }

    /**
     * Where the emission at a temperature comes from.
     *
     * @param averageWater average of flow and return, within the table
     * @return the source of the row at or above it
     * @throws OutOfRangeException if the temperature is outside the table
     */
    public static Source source(Temperature averageWater) {
        return ROWS.get(indexAbove(averageWater)).source;
    }

    /** The first row at or above the temperature that has a row below it. */
    private static int indexAbove(Temperature averageWater) {
        Temperature lowest = ROWS.get(0).water;
        Temperature highest = ROWS.get(ROWS.size() - 1).water;
        if (averageWater.compareTo(lowest) < 0 || averageWater.compareTo(highest) > 0) {
            throw new OutOfRangeException(
                    "average water temperature",
                    averageWater.textInBothSystems(),
                    "from " + lowest.text(Units.FAHRENHEIT) + " to " + highest.text(Units.FAHRENHEIT),
                    "rate the radiators by their size, with square feet EDR per section");
        }
        int index = 1;
        while (ROWS.get(index).water.compareTo(averageWater) < 0) {
            index++;
        }
        return index;
    }
}
