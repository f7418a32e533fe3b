package org.ullage.diagnosis;

import org.ullage.provenance.Constant;

/** How well each hypothesis explains the cold reading: where a loop with that fault is found filled. */
final class ColdPressureLikelihood {

    private static final Constant HALF = new Constant("share", 0.5, "1", LikelihoodTable.SOURCE);
    private static final Constant MOSTLY = new Constant("share", 0.8, "1", LikelihoodTable.SOURCE);

    /** A fill window narrower than this is widened to it: nobody fills more closely. */
    private static final Constant NARROWEST = new Constant("window", 20_000, "Pa", LikelihoodTable.SOURCE);

    private final double observed;
    private final double deviation;
    private final double bottom;
    private final double low;
    private final double high;
    private final double top;

    ColdPressureLikelihood(InstalledSystem system, Evidence evidence) {
        double air = system.atmosphere().si();
        double kelvins = evidence.cold().reading().temperature().si();
        SwingModel model = new SwingModel(system, system.relief().setting().si() + air);
        double lowest = moved(model, system, system.lowestFill().si() + air, kelvins);
        double highest = moved(model, system, system.highestFill().si() + air, kelvins);
        double widen = Math.max(0, NARROWEST.value() - (highest - lowest)) / 2;
        this.observed = evidence.cold().reading().pressure().si() + air;
        this.deviation = Densities.standard(evidence.cold().pressureError().si());
        this.bottom = Math.min(air, lowest - widen) - NARROWEST.value();
        this.low = lowest - widen;
        this.high = highest + widen;
        this.top = Math.max(system.relief().fullyOpenAt().si() + air, high + NARROWEST.value());
    }

    /** The fill pressure as it reads at another temperature of a sound loop. */
    private static double moved(SwingModel model, InstalledSystem system, double pascals, double kelvins) {
        return model.after(new Swing(pascals, system.fill().si(), kelvins, 1, 1, 1), system.gasSi(), false);
    }

    double of(Hypothesis hypothesis) {
        return switch (hypothesis) {
            case OVER_FILLED -> over();
            case FEED_PASSING -> mixed(MOSTLY.value(), over(), window());
            case SHORT_OF_WATER -> under();
            // An over-charged vessel is empty when cold, so that the first cooling takes the pressure away.
            case AIR_IN_LOOP, OVER_CHARGED -> mixed(HALF.value(), window(), under());
            case LOW_CHARGE, WATERLOGGED -> mixed(HALF.value(), window(), anywhere());
            default -> window();
        };
    }

    private static double mixed(double share, double one, double other) {
        return share * one + (1 - share) * other;
    }

    private double window() {
        return Densities.uniform(observed, low, high, deviation);
    }

    private double over() {
        return Densities.uniform(observed, high, top, deviation);
    }

    private double under() {
        return Densities.uniform(observed, bottom, low, deviation);
    }

    private double anywhere() {
        return Densities.uniform(observed, bottom, top, deviation);
    }

    /** Whether the cold reading is in the fill window, as far as the gauge can tell. */
    String words() {
        if (observed > high + deviation) {
            return "above the fill window";
        }
        return observed < low - deviation ? "below the fill window" : "in the fill window";
    }
}
