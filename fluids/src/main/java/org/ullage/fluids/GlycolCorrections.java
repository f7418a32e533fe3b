package org.ullage.fluids;

import java.util.List;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;

/** The corrected cells of the ASHRAE tables, with the reason for people. */
final class GlycolCorrections {

    private static final String MISPRINT =
            "the value found breaks an otherwise smooth column by 0.30 kg/m3 where no other cell is off by more than 0.02"
                    + " kg/m3; one digit misprinted explains it";

    private GlycolCorrections() {}

    static List<TableCorrection> of(Glycol glycol) {
        return GlycolData.of(glycol).corrections().stream()
                .map(correction -> published(glycol, correction))
                .toList();
    }

    /** Those that bear on a concentration: a column does so up to its neighbours. */
    static List<TableCorrection> near(Glycol glycol, double volumePercent) {
        return GlycolData.of(glycol).corrections().stream()
                .filter(c -> Math.abs(c.percent() - volumePercent) < AshraeTable.COLUMN_STEP)
                .map(correction -> published(glycol, correction))
                .toList();
    }

    private static TableCorrection published(Glycol glycol, AshraeTable.Correction c) {
        return new TableCorrection(
                glycol,
                Temperature.celsius(c.celsius()),
                VolumeFraction.percent(c.percent()),
                Density.kilogramsPerCubicMetre(c.asFound()),
                Density.kilogramsPerCubicMetre(c.asUsed()),
                MISPRINT,
                GlycolSources.CORRECTION);
    }
}
