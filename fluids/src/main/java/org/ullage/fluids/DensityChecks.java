package org.ullage.fluids;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ullage.provenance.Constant;
import org.ullage.quantity.OutOfRangeException;

/**
 * What a table of liquid density has to pass: density falls with temperature, and no row breaks the smoothness of the others.
 *
 * <p>A row is held against the cubic through four neighbours. It may be off by twice what rounding to the digits given can do,
 * and by what the curvature of a liquid adds between rows far apart; more is an outlier. In a table with 5 K steps and two
 * decimals that finds an error of 0.03 kg/m3.
 */
final class DensityChecks {

    /** Water is densest at 4 degC; above this no liquid of a hydronic loop gets denser with temperature, degC. */
    private static final double RISE_ALLOWED_BELOW =
            new Constant("t", 10, "degC", GlycolSources.DENSITY_MAXIMUM).value();

    /** Points that hold one up. */
    private static final int NEIGHBOURS = 4;

    /** What curvature may add, kg/m3 per K^4 of the step; of these liquids water is the most curved. */
    private static final double CURVATURE_ALLOWANCE =
            new Constant("a", 2e-6, "kg/m3/K4", GlycolSources.ROW_CHECK).value();

    private static final int DENSITY_DECIMALS = 3;

    private DensityChecks() {}

    /** @param rows by rising temperature */
    static void requireFalling(String name, List<DensityRow> rows) {
        boolean fallen = false;
        for (int i = 1; i < rows.size(); i++) {
            DensityRow before = rows.get(i - 1);
            DensityRow row = rows.get(i);
            boolean rises = row.density() > before.density();
            if (rises && (fallen || row.celsius() > RISE_ALLOWED_BELOW)) {
                throw new OutOfRangeException(
                        "density of " + name + " at " + row.temperature(),
                        row.density() + " kg/m3",
                        "at most the " + before.density() + " kg/m3 at " + before.temperature()
                                + ": density falls with temperature, but for a maximum below " + RISE_ALLOWED_BELOW
                                + " degC",
                        "correct one of the two rows");
            }
            fallen |= row.density() < before.density();
        }
    }

    /** @param rows by rising temperature */
    static void requireSmooth(String name, List<DensityRow> rows) {
        worst(rows).ifPresent(outlier -> {
            DensityRow row = rows.get(outlier.index());
            throw new OutOfRangeException(
                    "density of " + name + " at " + row.temperature(),
                    row.density() + " kg/m3",
                    "within " + FluidText.fixed(outlier.allowed(), DENSITY_DECIMALS) + " kg/m3 of "
                            + FluidText.fixed(outlier.expected(), DENSITY_DECIMALS)
                            + " kg/m3, which the rows beside it lead to",
                    "correct it or a row beside it, or read the table without the outlier check");
        });
    }

    /** A row, what its neighbours lead to and how far it may be off. */
    private record Fit(int index, double expected, double allowed, double density) {
        double excess() {
            return Math.abs(density - expected) / allowed;
        }
    }

    /** The row without which the rest comes nearest to being smooth, if it is not smooth as it is. */
    private static Optional<Fit> worst(List<DensityRow> rows) {
        List<Fit> suspects = IntStream.range(0, rows.size() > NEIGHBOURS ? rows.size() : 0)
                .mapToObj(i -> fit(rows, i))
                .filter(fit -> fit.excess() > 1)
                .toList();
        return suspects.stream()
                .min(Comparator.comparingDouble((Fit fit) -> roughness(rows, fit.index()))
                        .thenComparing(Comparator.comparingDouble(Fit::excess).reversed()));
    }

    private static double roughness(List<DensityRow> rows, int without) {
        List<DensityRow> rest = new ArrayList<>(rows);
        rest.remove(without);
        return IntStream.range(0, rest.size() > NEIGHBOURS ? rest.size() : 0)
                .mapToDouble(i -> fit(rest, i).excess())
                .max()
                .orElse(0);
    }

    private static Fit fit(List<DensityRow> rows, int index) {
        int first = Math.max(0, Math.min(index - NEIGHBOURS / 2, rows.size() - NEIGHBOURS - 1));
        int[] neighbours = IntStream.rangeClosed(first, first + NEIGHBOURS)
                .filter(i -> i != index)
                .toArray();
        DensityRow row = rows.get(index);
        double expected = 0;
        double rounding = row.resolution() / 2;
        double weights = 1;
        for (int i : neighbours) {
            double weight = weight(rows, neighbours, i, row.celsius());
            expected += weight * rows.get(i).density();
            rounding += Math.abs(weight) * rows.get(i).resolution() / 2;
            weights += Math.abs(weight);
        }
        double step = (rows.get(first + NEIGHBOURS).celsius() - rows.get(first).celsius()) / NEIGHBOURS;
        double curvature = CURVATURE_ALLOWANCE * step * step * step * step * weights;
        return new Fit(index, expected, 2 * rounding + curvature, row.density());
    }

    /** Lagrange's weight of one neighbour. */
    private static double weight(List<DensityRow> rows, int[] neighbours, int of, double celsius) {
        double weight = 1;
        for (int i : neighbours) {
            if (i != of) {
                weight *= (celsius - rows.get(i).celsius())
                        / (rows.get(of).celsius() - rows.get(i).celsius());
            }
        }
        return weight;
    }
}
