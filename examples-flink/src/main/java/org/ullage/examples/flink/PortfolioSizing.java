package org.ullage.examples.flink;

import java.io.Serializable;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.ullage.examples.file.SheetLine;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.uncertainty.SampledSizing;

/**
 * From a line of the portfolio to a line of the answer: the one function that every way of running it shares. What it answers hangs on
 * nothing but the line. Numbers are printed with every digit, so that equal text is equal bits.
 *
 * @param header the first line of the portfolio
 * @param draws for each line
 */
record PortfolioSizing(String header, int draws) implements Serializable {

    /** The header of the answer. */
    static final String COLUMNS = "id,required_volume,mean,standard_uncertainty,volume_95,answered,error";

    private static final double CONFIDENCE = 0.95;

    /** The answer, without a line break. */
    String answer(String text) {
        String id = "";
        try {
            SheetLine line = PortfolioLine.cells(header, text);
            id = line.cell("id");
            return row(id, PortfolioLine.of(line, text));
        } catch (IllegalArgumentException refusal) {
            return CSVFormat.RFC4180.format(id, "", "", "", "", "", refusal.getMessage());
        }
    }

    private String row(String id, PortfolioLine line) {
        Unit<Volume> unit = line.loop().system() == UnitSystem.IP ? Units.US_GALLON : Units.LITRE;
        // Asked first: its refusal names the columns.
        Volume required = line.loop().size(line.loop().method()).requiredVolume();
        SampledSizing sampled = line.question().sampled(draws, line.seed());
        List<Volume> volumes =
                List.of(required, sampled.mean(), sampled.standardUncertainty(), sampled.volumeFor(CONFIDENCE));
        return CSVFormat.RFC4180.format(
                id,
                volumes.get(0).text(unit),
                volumes.get(1).text(unit),
                volumes.get(2).text(unit),
                volumes.get(3).text(unit),
                sampled.result().answered(),
                "");
    }
}
