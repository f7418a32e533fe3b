package org.ullage.examples.choose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Area;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.selection.Objective;
import org.ullage.selection.SelectionJob;
import picocli.CommandLine.Option;

/** What limits the choice and what it is made for. */
final class ChoiceArguments {

    @Option(names = "--at-most", paramLabel = "N", description = "most vessels together; 6 if not given")
    private @Nullable Integer most;

    @Option(names = "--same-size", description = "all of one size; without it sizes may be mixed")
    private boolean sameSize;

    @Option(names = "--floor", paramLabel = "AREA", description = "floor there is for them, such as \"0.5 m2\"")
    private @Nullable Area floor;

    @Option(names = "--height", paramLabel = "LENGTH", description = "height there is for them")
    private @Nullable Length height;

    @Option(names = "--load", paramLabel = "MASS", description = "what the floor or rack may carry, all waterlogged")
    private @Nullable Mass load;

    @Option(
            names = "--at-vessel",
            paramLabel = "TEMPERATURE",
            description = "highest temperature at the vessel's connection; the loop's highest if not given")
    private @Nullable Temperature atVessel;

    @Option(
            names = "--for",
            paramLabel = "WISH",
            split = ",",
            description = {
                "what the choice is for, the most important first: cheapest, fewest, smallest-footprint, lightest;"
                        + " \"cheapest,fewest\" if not given"
            })
    private List<String> wishes = List.of("cheapest", "fewest");

    SelectionJob job(Sizing sizing) {
        SelectionJob job = SelectionJob.of(sizing);
        job = atVessel == null ? job : job.ratedFor(atVessel);
        job = most == null ? job : job.atMost(most);
        job = sameSize ? job.sameSizeOnly() : job;
        job = floor == null ? job : job.within(floor);
        job = height == null ? job : job.noTallerThan(height);
        job = load == null ? job : job.noHeavierThan(load, coldFluid(sizing).density());
        List<Objective> order = new ArrayList<>();
        wishes.forEach(wish -> order.add(objective(wish.strip())));
        return job.by(order.get(0), order.subList(1, order.size()).toArray(Objective[]::new));
    }

    private static Objective objective(String wish) {
        return Arrays.stream(Objective.values())
                .filter(one -> word(one).equals(wish))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--for \"" + wish + "\" is not known; known are "
                        + Arrays.stream(Objective.values())
                                .map(ChoiceArguments::word)
                                .collect(Collectors.joining(", "))));
    }

    private static String word(Objective objective) {
        return objective.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The fluid as heavy as it gets: cold. */
    private static SpecificVolume coldFluid(Sizing sizing) {
        Temperature cold = sizing.job().temperatures().cold();
        if (cold == null) {
            throw new IllegalArgumentException("--load needs the lowest temperature of the loop, in its column cold");
        }
        AbsolutePressure pressure = sizing.coldPressure().absolute(sizing.atmosphere());
        return sizing.job().loop().fluid().specificVolume(cold, pressure);
    }
}
