package example.quillbrook;

/** The rule of Quillbrook Yard for a diaphragm vessel charged to its cold pressure; volumes alike, pressures alike and absolute. */
public final class VesselRule {

    private VesselRule() {}

    /** What a loop gives off: its contents times the growth of the water less that of the pipe round it. */
    public static double expansion(double contents, double waterGrowth, double pipeLengthGrowth) {
        return contents * (waterGrowth - 3 * pipeLengthGrowth);
    }

    /** The vessel that takes it in. */
    public static double vessel(double expansion, double cold, double hot) {
        if (cold >= hot) {
            throw new IllegalArgumentException("the final pressure must be above the cold one");
        }
        return expansion / (1 - cold / hot);
    }
}
