package org.ullage.examples.size;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * The units of one answer: those of the line.
 *
 * @param volume the unit of the contents
 * @param pressure the unit of the first pressure that was given; bar if none was
 */
record AnswerUnits(Unit<Volume> volume, Unit<Pressure> pressure) {

    private static final List<Unit<Volume>> VOLUMES =
            List.of(Units.LITRE, Units.CUBIC_METRE, Units.US_GALLON, Units.CUBIC_FOOT);

    private static final List<Unit<Pressure>> PRESSURES = List.of(
            Units.PASCAL,
            Units.KILOPASCAL,
            Units.MEGAPASCAL,
            Units.BAR,
            Units.MILLIBAR,
            Units.PSI,
            Units.METRE_OF_WATER,
            Units.FOOT_OF_WATER);

    private static final List<Column> PRESSURES_IN_ORDER =
            List.of(Column.COLD_PRESSURE, Column.FINAL_PRESSURE, Column.RELIEF_SETTING, Column.PRECHARGE);

    /** The units of a line that has been read. */
    static AnswerUnits of(LoopLine line) {
        Unit<Volume> volume = written(line, Column.CONTENTS, VOLUMES);
        return new AnswerUnits(volume == null ? Units.LITRE : volume, pressure(line));
    }

    private static Unit<Pressure> pressure(LoopLine line) {
        for (Column column : PRESSURES_IN_ORDER) {
            Unit<Pressure> unit = written(line, column, PRESSURES);
            if (unit != null) {
                return unit;
            }
        }
        return Units.BAR;
    }

    private static <D> @Nullable Unit<D> written(LoopLine line, Column column, List<Unit<D>> offered) {
        String text = line.text(column);
        return text == null ? null : WrittenUnit.of(text, offered);
    }

    /** The system the workings are printed in. */
    UnitSystem system() {
        return volume.equals(Units.US_GALLON) || volume.equals(Units.CUBIC_FOOT) ? UnitSystem.IP : UnitSystem.SI;
    }
}
