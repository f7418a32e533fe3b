package org.ullage.examples.size;

import java.util.List;
import java.util.stream.Collectors;
import org.ullage.examples.file.Quoted;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/** Says in which columns a refusal by a method or a fluid has its cause. */
final class Refusal {

    private final LoopCase loop;
    private final Method method;

    private Refusal(LoopCase loop, Method method) {
        this.loop = loop;
        this.method = method;
    }

    /** The refusal with the columns before it, and what stands in them: a method may speak of it in other units. */
    static String text(LoopCase loop, Method method, IllegalArgumentException refusal) {
        Refusal said = new Refusal(loop, method);
        return said.columns(refusal).stream().map(said::cell).collect(Collectors.joining(", ")) + ": "
                + refusal.getMessage();
    }

    private String cell(Column column) {
        // The method that was asked need not be the one that the line names.
        String text = column == Column.METHOD ? method.name() : loop.line().text(column);
        return text == null ? column.word() : column.word() + " " + Quoted.of(text);
    }

    private List<Column> columns(IllegalArgumentException refusal) {
        if (refusal instanceof OutOfRangeException outside) {
            return columnsOf(outside.quantity());
        }
        if (refusal instanceof MissingInputException missing) {
            return columnsOfMissing(missing.input());
        }
        return List.of(Column.METHOD);
    }

    private List<Column> columnsOf(String quantity) {
        return switch (quantity) {
            case "vessel kind" -> List.of(Column.VESSEL);
            case "highest temperature" -> List.of(Column.HOT);
            case "net expansion" -> List.of(Column.COLD, Column.HOT);
            case "volume" -> List.of(Column.CONTENTS);
            case "final pressure" -> List.of(given(Column.FINAL_PRESSURE, Column.RELIEF_SETTING));
            case "gas charge" -> List.of(given(Column.PRECHARGE, coldPressure()));
            case "cold pressure", "absolute pressure" -> List.of(coldPressure());
            default -> List.of(quantity.contains("temperature") ? temperatureOutside() : Column.METHOD);
        };
    }

    private static List<Column> columnsOfMissing(String input) {
        return switch (input) {
            case "lowest (fill) temperature" -> List.of(Column.COLD);
            case "highest temperature" -> List.of(Column.HOT);
            case "static head or cold pressure" -> List.of(Column.STATIC_HEAD, Column.COLD_PRESSURE);
            case "relief setting or final pressure" -> List.of(Column.RELIEF_SETTING, Column.FINAL_PRESSURE);
            default -> List.of(Column.METHOD);
        };
    }

    private Column coldPressure() {
        return given(Column.COLD_PRESSURE, Column.STATIC_HEAD);
    }

    private Column given(Column first, Column otherwise) {
        return loop.line().gives(first) ? first : otherwise;
    }

    /** A fluid refuses a temperature without knowing which end of the range it is. */
    private Column temperatureOutside() {
        SizingJob job = loop.job();
        LoopFluid fluid = job.loop().fluid();
        Temperature cold = job.temperatures().cold();
        boolean coldOutside =
                cold != null && (cold.compareTo(fluid.lowest()) < 0 || cold.compareTo(fluid.highest()) > 0);
        return coldOutside ? Column.COLD : Column.HOT;
    }
}
