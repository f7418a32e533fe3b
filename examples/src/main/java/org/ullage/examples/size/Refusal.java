package org.ullage.examples.size;

import org.ullage.loop.LoopFluid;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/** Says in which columns a refusal by a method or a fluid has its cause. */
final class Refusal {

    private final LoopCase loop;

    private Refusal(LoopCase loop) {
        this.loop = loop;
    }

    /** The refusal with the columns before it. */
    static String text(LoopCase loop, IllegalArgumentException refusal) {
        return new Refusal(loop).columns(refusal) + ": " + refusal.getMessage();
    }

    private String columns(IllegalArgumentException refusal) {
        if (refusal instanceof OutOfRangeException outside) {
            return columnsOf(outside.quantity());
        }
        if (refusal instanceof MissingInputException missing) {
            return columnsOfMissing(missing.input());
        }
        return Column.METHOD.word();
    }

    private String columnsOf(String quantity) {
        return switch (quantity) {
            case "vessel kind" -> Column.VESSEL.word();
            case "highest temperature" -> Column.HOT.word();
            case "net expansion" -> Column.COLD.word() + ", " + Column.HOT.word();
            case "volume" -> Column.CONTENTS.word();
            case "final pressure" -> given(Column.FINAL_PRESSURE, Column.RELIEF_SETTING);
            case "gas charge" -> given(Column.PRECHARGE, coldPressure());
            case "absolute pressure" -> coldPressure().word();
            default -> quantity.contains("temperature") ? temperatureOutside() : Column.METHOD.word();
        };
    }

    private static String columnsOfMissing(String input) {
        return switch (input) {
            case "lowest (fill) temperature" -> Column.COLD.word();
            case "highest temperature" -> Column.HOT.word();
            case "static head or cold pressure" -> Column.STATIC_HEAD.word() + ", " + Column.COLD_PRESSURE.word();
            case "relief setting or final pressure" ->
                Column.RELIEF_SETTING.word() + ", " + Column.FINAL_PRESSURE.word();
            default -> Column.METHOD.word();
        };
    }

    private Column coldPressure() {
        return loop.line().gives(Column.COLD_PRESSURE) ? Column.COLD_PRESSURE : Column.STATIC_HEAD;
    }

    private String given(Column first, Column otherwise) {
        return (loop.line().gives(first) ? first : otherwise).word();
    }

    /** A fluid refuses a temperature without knowing which end of the range it is. */
    private String temperatureOutside() {
        SizingJob job = loop.job();
        LoopFluid fluid = job.loop().fluid();
        Temperature cold = job.cold();
        boolean coldOutside =
                cold != null && (cold.compareTo(fluid.lowest()) < 0 || cold.compareTo(fluid.highest()) > 0);
        return (coldOutside ? Column.COLD : Column.HOT).word();
    }
}
