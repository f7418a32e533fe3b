package org.ullage.report;

import java.util.List;
import java.util.stream.IntStream;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.sizing.SizingSweep;
import org.ullage.sizing.SweepAxis;

/** Draws how the required volume of a loop hangs on two of its inputs. */
public final class SweepChart {

    /** Digits of a number in a cell. */
    private static final int DIGITS = 4;

    private SweepChart() {}

    /**
     * The sweep as a heat map.
     *
     * @param sweep the grid
     * @param system metric or inch-pound
     * @return the chart
     */
    public static HeatMap of(SizingSweep sweep, UnitSystem system) {
        Unit<Volume> unit = system == UnitSystem.SI ? Units.LITRE : Units.US_GALLON;
        return new HeatMap(
                "Required volume by " + sweep.method().name(),
                "required volume, " + unit.symbol(),
                "refused by the method",
                steps(sweep.down(), system),
                steps(sweep.across(), system),
                IntStream.range(0, sweep.down().size())
                        .mapToObj(row -> row(sweep, row, unit))
                        .toList());
    }

    private static HeatMap.Steps steps(SweepAxis axis, UnitSystem system) {
        return new HeatMap.Steps(axis.words(), axis.labels(system));
    }

    private static List<HeatCell> row(SizingSweep sweep, int row, Unit<Volume> unit) {
        return IntStream.range(0, sweep.across().size())
                .mapToObj(column -> sweep.requiredVolume(row, column)
                        .map(volume -> cell(volume, unit))
                        .orElse(new HeatCell(null, "refused")))
                .toList();
    }

    /** The unit stands in the name of the numbers. */
    private static HeatCell cell(Volume volume, Unit<Volume> unit) {
        return new HeatCell(volume.in(unit), Digits.significant(volume.in(unit), DIGITS));
    }
}
