package org.ullage.fluids;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Everything that is published for one glycol, read once from the resources. Immutable. */
final class GlycolData {

    private static final GlycolData PROPYLENE = new GlycolData("propylene");
    private static final GlycolData ETHYLENE = new GlycolData("ethylene");

    private final DensitySurface ashrae;
    private final DensitySurface ashraeAsPrinted;
    private final List<AshraeTable.Correction> corrections;
    private final AshraePairing pairing;
    private final MelinderPolynomial melinder;
    private final double[] conde;
    private final PureGlycol pure;

    private GlycolData(String key) {
        NumberTable fine = NumberTable.read("ashrae-density-" + key + ".tsv");
        NumberTable coarse = NumberTable.read("ashrae-density-hot-" + key + ".tsv");
        corrections =
                corrections(NumberTable.read("ashrae-density-corrections.tsv").where(key::equals));
        ashrae = new AshraeTable(fine, coarse, corrections).surface();
        ashraeAsPrinted = new AshraeTable(fine, coarse, List.of()).surface();
        pairing = new AshraePairing(NumberTable.read("ashrae-freezing-" + key + ".tsv"));
        melinder = new MelinderPolynomial(NumberTable.read("melinder-2010-" + key + ".tsv"));
        NumberTable condeRow = NumberTable.read("conde-2011.tsv").where(key::equals);
        conde = condeRow.names().stream()
                .skip(1)
                .mapToDouble(name -> condeRow.number(0, name))
                .toArray();
        pure = new PureGlycol(NumberTable.read("dippr-pure-glycols.tsv").where(key::equals));
    }

    static GlycolData of(Glycol glycol) {
        return glycol == Glycol.PROPYLENE ? PROPYLENE : ETHYLENE;
    }

    private static List<AshraeTable.Correction> corrections(NumberTable table) {
        return IntStream.range(0, table.size())
                .mapToObj(row -> new AshraeTable.Correction(
                        table.number(row, "t_degC"),
                        table.number(row, "vol_pct"),
                        table.number(row, "as_found"),
                        table.number(row, "as_used")))
                .toList();
    }

    DensitySurface ashrae() {
        return ashrae;
    }

    DensitySurface ashraeAsPrinted() {
        return ashraeAsPrinted;
    }

    List<AshraeTable.Correction> corrections() {
        return corrections;
    }

    AshraePairing pairing() {
        return pairing;
    }

    MelinderPolynomial melinder() {
        return melinder;
    }

    /** A1 to A5 of M. Conde's density equation. */
    double[] conde() {
        return Arrays.copyOf(conde, conde.length);
    }

    PureGlycol pure() {
        return pure;
    }
}
