package org.ullage.selection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Digits;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/**
 * What the next smaller vessels would do: one vessel of the selection exchanged for a smaller one of the catalogue or left out, the
 * largest nominal volume that falls short of what the gas law requires, within every other limit of the job. The pressure follows from
 * the share of their nominal volume to which all vessels fill, those that reach their acceptance limit first excepted. Immutable.
 *
 * @param combination the smaller vessels
 * @param reached final pressure they would reach by the gas law, or null if the water does not fit at any pressure
 * @param beyondAllowed how far that is above the highest pressure allowed, or null likewise
 * @param marginUsed which share of the margin between the highest pressure allowed and the relief setting that takes up; more than 1: the
 *     valve lifts; null if the water does not fit or if there is no margin
 */
public record NextSizeDown(
        Combination combination,
        @Nullable GaugePressure reached,
        @Nullable PressureDifference beyondAllowed,
        @Nullable Double marginUsed)
        implements Serializable {

    private static final int PERCENT_DIGITS = 3;

    static @Nullable NextSizeDown of(Selection selection, SizedGas cushion) {
        return smaller(selection, cushion)
                .map(combination -> reaching(combination, cushion))
                .orElse(null);
    }

    private static Optional<Combination> smaller(Selection selection, SizedGas cushion) {
        Volume enough = GasLaw.nominalVolume(cushion.water(), cushion.charge(), cushion.cold(), cushion.last());
        CountedVolume counted = new CountedVolume(
                Exact.requiredVolume(enough.si()),
                Exact.requiredVolume(cushion.water().si()));
        return exchanged(selection).stream()
                .filter(combination -> counted.of(combination) < counted.required())
                .filter(combination -> Fitting.fits(selection.job(), combination))
                .max(Comparator.comparing(Combination::nominal));
    }

    private static List<Combination> exchanged(Selection selection) {
        List<CatalogueItem> usable = selection.catalogue().items().stream()
                .filter(item -> Eligibility.allows(selection.job(), item))
                .toList();
        List<Combination> exchanged = new ArrayList<>();
        for (Combination.Line line : selection.chosen().lines()) {
            List<CatalogueItem> rest = new ArrayList<>(selection.chosen().items());
            rest.remove(line.item());
            if (!rest.isEmpty()) {
                exchanged.add(Combination.of(rest));
            }
            for (CatalogueItem item : usable) {
                if (item.nominal().compareTo(line.item().nominal()) < 0) {
                    List<CatalogueItem> items = new ArrayList<>(rest);
                    items.add(item);
                    exchanged.add(Combination.of(items));
                }
            }
        }
        return exchanged;
    }

    private static NextSizeDown reaching(Combination combination, SizedGas cushion) {
        double share = WaterShare.of(combination.items(), cushion.water().si());
        if (share >= cushion.charge().si() / cushion.cold().si()) {
            return new NextSizeDown(combination, null, null, null);
        }
        AbsolutePressure reached = GasLaw.finalPressure(
                combination.nominal(), combination.nominal().times(share), cushion.charge(), cushion.cold());
        double margin = cushion.relief().si() - cushion.last().si();
        double beyond = reached.si() - cushion.last().si();
        return new NextSizeDown(
                combination,
                reached.gauge(cushion.atmosphere()),
                PressureDifference.ofSi(beyond),
                margin > 0 ? beyond / margin : null);
    }

    /**
     * The comparison for people.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        String smaller = combination + " (" + combination.nominal().text(system) + ")";
        if (reached == null || beyondAllowed == null) {
            return smaller + " could not take the water in at any pressure";
        }
        String pressure = smaller + " would reach " + reached.text(system) + ", " + beyondAllowed.text(system)
                + " above the highest pressure allowed";
        if (marginUsed == null) {
            return pressure + ", which is the relief setting: the valve lifts";
        }
        return pressure + ": " + Digits.significant(marginUsed * 100, PERCENT_DIGITS)
                + " % of the margin below the relief setting" + (marginUsed >= 1 ? ": the valve lifts" : "");
    }
}
