package org.ullage.selection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Volume;

/** The search against a walk through every combination. */
class BranchAndBoundTest {

    private static final int CASES = 250;

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 9, 30})
    void findsTheBestAndTheSecondOfAllCombinations(int variety) {
        Random random = new Random(variety);
        int feasible = 0;
        for (int i = 0; i < CASES; i++) {
            Catalogue catalogue = Vessels.random(random, 1 + random.nextInt(6), variety);
            SelectionJob job = job(random, variety);
            Enumeration all = new Enumeration(catalogue, job);
            List<int[]> ranked = all.ranked();
            List<int[]> found = BranchAndBound.bestTwo(Problem.of(catalogue, job));
            assertThat(found).as("case %d", i).hasSize(Math.min(2, ranked.size()));
            for (int place = 0; place < found.size(); place++) {
                assertThat(all.costs(Combination.of(catalogue, found.get(place))))
                        .as("case %d, place %d", i, place)
                        .usingElementComparator(BigDecimal::compareTo)
                        .isEqualTo(all.costs(ranked.get(place)));
            }
            if (!found.isEmpty()) {
                feasible++;
                assertThat(BranchAndBound.best(Problem.of(catalogue, job))).isEqualTo(found.get(0));
            }
        }
        assertThat(feasible).isBetween(CASES / 4, CASES);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 9, 30})
    void equalCombinationsAreDecidedByTheLargerVesselAndThePlaceInTheCatalogue(int variety) {
        Random random = new Random(variety);
        for (int i = 0; i < CASES; i++) {
            Catalogue catalogue = Vessels.random(random, 1 + random.nextInt(5), variety);
            SelectionJob job = job(random, variety);
            Enumeration all = new Enumeration(catalogue, job);
            List<int[]> ranked = all.ranked();
            if (!ranked.isEmpty()) {
                List<Integer> order = Problem.of(catalogue, job).candidates().stream()
                        .map(Candidate::item)
                        .toList();
                List<Integer> first = ranked.stream()
                        .filter(counts -> all.costs(counts).equals(all.costs(ranked.get(0))))
                        .map(counts -> places(counts, order))
                        .min((one, other) -> Arrays.compare(ints(one), ints(other)))
                        .orElseThrow();
                int[] best = BranchAndBound.best(Problem.of(catalogue, job));
                assertThat(Arrays.stream(best).map(order::indexOf).boxed().toList())
                        .as("case %d", i)
                        .isEqualTo(first);
            }
        }
    }

    private static List<Integer> places(int[] counts, List<Integer> order) {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < order.size(); place++) {
            places.addAll(Collections.nCopies(counts[order.get(place)], place));
        }
        return places;
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 9, 30})
    void frontIsThatOfAllCombinations(int variety) {
        Random random = new Random(variety);
        int several = 0;
        for (int i = 0; i < CASES; i++) {
            Catalogue catalogue = Vessels.random(random, 1 + random.nextInt(6), variety);
            SelectionJob job = job(random, variety);
            Enumeration all = new Enumeration(catalogue, job);
            List<List<BigDecimal>> expected = all.front();
            List<List<BigDecimal>> front = ParetoFront.of(catalogue, job).combinations().stream()
                    .map(combination -> List.of(
                            combination.price(),
                            BigDecimal.valueOf(Objective.SMALLEST_FOOTPRINT.exact(combination), Exact.AREA_DECIMALS)
                                    .stripTrailingZeros(),
                            BigDecimal.valueOf(combination.vessels())))
                    .toList();
            assertThat(front).as("case %d", i).containsExactlyInAnyOrderElementsOf(expected);
            several += front.size() > 2 ? 1 : 0;
        }
        assertThat(several).isGreaterThan(CASES / 30);
    }

    private static SelectionJob job(Random random, int variety) {
        Volume nominal = Volume.litres(1 + random.nextInt(30 * variety));
        Volume water = Volume.ofSi(nominal.si() * (1 + random.nextInt(4)) / 4);
        int which = random.nextInt(3);
        SelectionJob job = SelectionJob.forVolumes(which == 0 ? null : nominal, which == 1 ? null : water)
                .atMost(1 + random.nextInt(4));
        if (random.nextInt(3) == 0) {
            job = job.within(Area.squareMetres((1 + random.nextInt(3 * variety)) / 10.0));
        }
        if (random.nextInt(3) == 0) {
            job = job.noHeavierThan(
                    Mass.kilograms(5 + random.nextInt(40 * variety)), Density.kilogramsPerCubicMetre(1000));
        }
        if (random.nextInt(6) == 0) {
            job = job.sameSizeOnly();
        }
        List<Objective> order = new ArrayList<>(List.of(Objective.values()));
        Collections.shuffle(order, random);
        return job.by(order.get(0), order.subList(1, 1 + random.nextInt(4)).toArray(Objective[]::new));
    }
}
