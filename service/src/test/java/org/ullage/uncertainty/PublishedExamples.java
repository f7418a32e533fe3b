package org.ullage.uncertainty;

import java.util.List;

/**
 * Models and inputs of worked examples, from memory of JCGM 100:2008 Annex H and JCGM 101:2008 clause 9; the documents were not opened.
 * Each was kept only because the inputs reproduce the printed results.
 */
final class PublishedExamples {

    /** JCGM 100:2008 H.1: l = l_s + d - l_s (d_alpha theta + alpha_s d_theta); metres and kelvins. */
    static final ModelFunction END_GAUGE = x -> x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]);

    static final List<ModelInput> END_GAUGE_INPUTS = List.of(
            new ModelInput("length of the standard", Spread.normal(0.050000623, 25e-9), 18.0),
            new ModelInput("difference of the two", Spread.normal(215e-9, 9.7e-9), 25.6),
            new ModelInput("difference of the expansions", Spread.uniform(-1e-6, 1e-6), 50.0),
            new ModelInput("temperature of the bed", Spread.normal(-0.1, 0.41)),
            new ModelInput("expansion of the standard", Spread.uniform(9.5e-6, 13.5e-6)),
            new ModelInput("difference of the temperatures", Spread.uniform(-0.05, 0.05), 2.0));

    /** JCGM 100:2008 table H.2: five simultaneous observations of voltage in V, current in A and phase angle in rad. */
    static final double[][] OBSERVATIONS = {
        {5.007, 4.994, 5.005, 4.990, 4.999},
        {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3},
        {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
    };

    /** JCGM 101:2008 9.3: deviation of a mass from its nominal value in mg, calibrated in air against a reference of other density. */
    static final ModelFunction MASS = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;

    static final List<ModelInput> MASS_INPUTS = List.of(
            new ModelInput("reference mass", Spread.normal(100_000, 0.050)),
            new ModelInput("added mass", Spread.normal(1.234, 0.020)),
            new ModelInput("density of the air", Spread.uniform(1.10, 1.30)),
            new ModelInput("density of the weight", Spread.uniform(7000, 9000)),
            new ModelInput("density of the reference", Spread.uniform(7950, 8050)));

    private PublishedExamples() {}

    /** JCGM 101:2008 9.2: the sum of four inputs of one kind. */
    static List<ModelInput> four(Spread spread) {
        return List.of(
                new ModelInput("first", spread),
                new ModelInput("second", spread),
                new ModelInput("third", spread),
                new ModelInput("fourth", spread));
    }

    static double sum(double[] x) {
        return x[0] + x[1] + x[2] + x[3];
    }
}
