package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.selection.Catalogue;
import org.ullage.selection.CatalogueItem;
import org.ullage.selection.CatalogueItemBuilder;
import org.ullage.selection.Combination;
import org.ullage.selection.Objective;
import org.ullage.selection.Selection;
import org.ullage.selection.SelectionJob;
import org.ullage.vessel.VesselKind;

/**
 * The exact choice of vessels against ojAlgo's integer solver. Prices in cents, areas in cm2, masses in grams and volumes in litres are
 * whole numbers, and the two must agree to the last digit. The solver minimises the objectives one after the other, each with the optima
 * of those before it held fast.
 *
 * <p>The solver works with tolerances and in a few cases in a thousand overlooks the best answer or every answer. Where the two differ,
 * every combination is tried, and ours must be the best of them; the differences must stay below one in a hundred.
 */
class SelectionOracleTest {

    /** The required water is this part of the required nominal volume: a vessel counts with twice its acceptance limit at most. */
    private static final int NOMINAL_BY_WATER = 2;

    /** A fraction is never above one half: no Gomory cuts, which here cut off more answers than branching alone overlooks. */
    private static final IntegerStrategy WITHOUT_CUTS = IntegerStrategy.newConfigurable()
            .withGMICutConfiguration(new IntegerStrategy.GMICutConfiguration().withFractionality(0.6));

    private static final Density WATER = Density.kilogramsPerCubicMetre(1000);

    @ParameterizedTest
    @CsvSource({
        // few different numbers: equal prices, equal sizes and ties everywhere
        "800, 6, 3, 2",
        "800, 8, 8, 2",
        "600, 12, 400, 2",
        // all four objectives
        "100, 8, 5, 4",
        "12, 40, 400, 1",
    })
    void sameOptimum(int cases, int items, int variety, int objectives) {
        Random random = new Random(cases + items);
        int feasible = 0;
        int misses = 0;
        for (int i = 0; i < cases; i++) {
            Catalogue catalogue = catalogue(random, 3 + random.nextInt(items - 2), variety);
            Limits limits = Limits.of(random, variety);
            List<Objective> order = new ArrayList<>(List.of(Objective.values()));
            Collections.shuffle(order, random);
            order = order.subList(0, objectives);
            List<Long> ours = byUllage(catalogue, limits, order);
            List<Long> solvers = byOracle(catalogue, limits, order);
            if (!ours.equals(solvers)) {
                misses++;
                solvers = new Trial(catalogue, limits, order).best();
            }
            assertThat(ours).as("case %d: %s by %s", i, limits, order).isEqualTo(solvers);
            feasible += ours.isEmpty() ? 0 : 1;
        }
        assertThat(feasible).isBetween(cases / 3, cases);
        assertThat(misses).isLessThanOrEqualTo(cases / 100);
    }

    /** Every combination, in whole numbers. */
    private static final class Trial {

        private final List<CatalogueItem> items;
        private final Limits limits;
        private final List<Objective> order;
        private List<Long> best = List.of();

        Trial(Catalogue catalogue, Limits limits, List<Objective> order) {
            this.items = catalogue.items();
            this.limits = limits;
            this.order = order;
        }

        List<Long> best() {
            extend(0, limits.vessels(), new ArrayList<>());
            return best;
        }

        private void extend(int from, int left, List<Combination.Line> lines) {
            if (!lines.isEmpty() && limits.allow(new Combination(lines))) {
                List<Long> totals = totals(new Combination(lines), order);
                best = best.isEmpty() || isBelow(totals, best) ? totals : best;
            }
            for (int i = from; i < items.size(); i++) {
                for (int count = 1; count <= left; count++) {
                    lines.add(new Combination.Line(items.get(i), count));
                    extend(i + 1, left - count, lines);
                    lines.remove(lines.size() - 1);
                }
            }
        }

        private static boolean isBelow(List<Long> one, List<Long> other) {
            return Arrays.compare(one.toArray(Long[]::new), other.toArray(Long[]::new)) < 0;
        }
    }

    /** Required litres of nominal volume, most vessels, and limits in cm2 and grams; 0 is no limit. */
    private record Limits(long litres, int vessels, long footprint, long load) {

        static Limits of(Random random, int variety) {
            int vessels = 1 + random.nextInt(6);
            int litres = 2 + 2 * random.nextInt(4 * variety);
            return new Limits(
                    litres,
                    vessels,
                    random.nextInt(3) == 0 ? 1 + random.nextInt(4 * variety) : 0,
                    random.nextInt(3) == 0 ? 1000L * litres + random.nextInt(10_000 * variety) : 0);
        }

        /** Whether a combination keeps them, in whole numbers. */
        boolean allow(Combination chosen) {
            return chosen.vessels() <= vessels
                    && chosen.lines().stream()
                            .allMatch(line -> line.item().stock() == null
                                    || line.count() <= line.item().stock())
                    && total(chosen, SelectionOracleTest::counted) >= litres
                    && (footprint == 0
                            || total(chosen, item -> number(item, Objective.SMALLEST_FOOTPRINT)) <= footprint)
                    && (load == 0 || total(chosen, SelectionOracleTest::waterlogged) <= load);
        }

        SelectionJob job(List<Objective> order) {
            SelectionJob job = SelectionJob.forVolumes(
                            Volume.litres((double) litres), Volume.litres((double) litres / NOMINAL_BY_WATER))
                    .atMost(vessels)
                    .by(order.get(0), order.subList(1, order.size()).toArray(Objective[]::new));
            job = footprint == 0 ? job : job.within(Area.squareMetres(footprint * 1e-4));
            return load == 0 ? job : job.noHeavierThan(Mass.kilograms(load * 1e-3), WATER);
        }
    }

    private static Catalogue catalogue(Random random, int items, int variety) {
        List<CatalogueItem> list = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            int litres = 2 + 2 * random.nextInt(variety);
            CatalogueItemBuilder item = CatalogueItem.named("v" + i, VesselKind.BLADDER)
                    .nominal(Volume.litres(litres))
                    .acceptanceLimit(Volume.litres(1 + random.nextInt(litres)))
                    .maximum(GaugePressure.bar(6), Temperature.celsius(110))
                    .emptyMass(Mass.kilograms((1 + random.nextInt(500 * variety)) * 1e-3))
                    .standing(Area.squareMetres((1 + random.nextInt(variety)) * 1e-4), Length.metres(1))
                    .price(BigDecimal.valueOf(random.nextInt(10 * variety), 2));
            list.add(random.nextInt(4) == 0 ? item.stock(random.nextInt(3)).build() : item.build());
        }
        return Catalogue.of(list);
    }

    private static List<Long> byUllage(Catalogue catalogue, Limits limits, List<Objective> order) {
        if (!(catalogue.choose(limits.job(order)) instanceof Selection selection)) {
            return List.of();
        }
        assertThat(limits.allow(selection.chosen()))
                .as("%s allow %s", limits, selection.chosen())
                .isTrue();
        return totals(selection.chosen(), order);
    }

    private static List<Long> totals(Combination combination, List<Objective> order) {
        return order.stream()
                .map(objective -> total(combination, item -> number(item, objective)))
                .toList();
    }

    private static long total(Combination combination, ToLongFunction<CatalogueItem> number) {
        return combination.lines().stream()
                .mapToLong(line -> line.count() * number.applyAsLong(line.item()))
                .sum();
    }

    private static long counted(CatalogueItem item) {
        return Math.min(litres(item.nominal()), NOMINAL_BY_WATER * litres(item.acceptance()));
    }

    private static long waterlogged(CatalogueItem item) {
        return grams(item) + 1000 * litres(item.nominal());
    }

    private static long number(CatalogueItem item, Objective objective) {
        return switch (objective) {
            case CHEAPEST -> item.price().movePointRight(2).longValueExact();
            case FEWEST -> 1;
            case SMALLEST_FOOTPRINT -> Math.round(item.footprint().in(Units.SQUARE_METRE) * 1e4);
            case LIGHTEST -> grams(item);
        };
    }

    private static long grams(CatalogueItem item) {
        return Math.round(item.emptyMass().in(Units.KILOGRAM) * 1e3);
    }

    private static long litres(Volume volume) {
        return Math.round(volume.in(Units.LITRE));
    }

    private static List<Long> byOracle(Catalogue catalogue, Limits limits, List<Objective> order) {
        List<Long> optima = new ArrayList<>();
        for (int stage = 0; stage < order.size(); stage++) {
            Long optimum = optimum(catalogue, limits, order.subList(0, stage + 1), optima);
            if (optimum == null) {
                return optima;
            }
            optima.add(optimum);
        }
        return optima;
    }

    /** The least of the last objective with the optima of those before it, or null if nothing is feasible. */
    private static @Nullable Long optimum(
            Catalogue catalogue, Limits limits, List<Objective> order, List<Long> optima) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Objective last = order.get(order.size() - 1);
        List<CatalogueItem> items = catalogue.items();
        for (CatalogueItem item : items) {
            int stock = item.stock() == null ? limits.vessels() : Math.min(item.stock(), limits.vessels());
            model.addVariable(item.id()).integer().lower(0).upper(stock).weight(number(item, last));
        }
        sum(model, "vessels", items, item -> 1).upper(limits.vessels());
        sum(model, "volume", items, SelectionOracleTest::counted).lower(limits.litres());
        if (limits.footprint() > 0) {
            sum(model, "footprint", items, item -> number(item, Objective.SMALLEST_FOOTPRINT))
                    .upper(limits.footprint());
        }
        if (limits.load() > 0) {
            sum(model, "load", items, SelectionOracleTest::waterlogged).upper(limits.load());
        }
        for (int stage = 0; stage < optima.size(); stage++) {
            Objective fixed = order.get(stage);
            sum(model, "fixed " + fixed, items, item -> number(item, fixed)).level(optima.get(stage));
        }
        model.options.integer(WITHOUT_CUTS);
        Optimisation.Result result = model.minimise();
        return result.getState().isFeasible()
                ? BigDecimal.valueOf(result.getValue())
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact()
                : null;
    }

    private static Expression sum(
            ExpressionsBasedModel model, String name, List<CatalogueItem> items, ToLongFunction<CatalogueItem> number) {
        Expression expression = model.addExpression(name);
        for (int i = 0; i < items.size(); i++) {
            Variable variable = model.getVariable(i);
            expression.set(variable, number.applyAsLong(items.get(i)));
        }
        return expression;
    }
}
