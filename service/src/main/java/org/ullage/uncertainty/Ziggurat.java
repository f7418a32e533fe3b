package org.ullage.uncertainty;

import java.util.SplittableRandom;
import org.apache.commons.math3.special.Erf;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * Standard normal draws by the ziggurat of Marsaglia and Tsang: the half density is covered by 256 layers of one area, of which the
 * lowest has the tail. Of 100 draws 99 cost one random number, a product and a comparison. It is written out here, in operations that
 * every machine does alike, so that a seed gives the same bits with any Java release.
 */
final class Ziggurat {

    private static final Source METHOD = Source.fromMemory(
            "G. Marsaglia and W. W. Tsang, The Ziggurat Method for Generating Random Variables, Journal of Statistical Software 5(8), 2000",
            "256 layers");

    /** Where the tail begins; with it the topmost layer closes at the top of the density. */
    private static final double TAIL = new Constant("r", 3.654152885361009, "1", METHOD).value();

    /** A power of two, so that eight random bits choose one. */
    private static final int LAYERS = 256;

    /** The random bits that are left for the place within the layer, sign included, less one. */
    private static final int PLACE_BITS = 52;

    private static final double TO_UNIT = Math.scalb(1.0, -PLACE_BITS);

    /** Right ends of the layers from the bottom up; the first is that of a layer with the tail folded in. */
    private static final double[] X = new double[LAYERS + 1];

    /** The density at each right end, 1 at the top. */
    private static final double[] Y = new double[LAYERS + 1];

    static {
        double area = area();
        X[0] = area / density(TAIL);
        X[1] = TAIL;
        Y[0] = density(X[0]);
        Y[1] = density(TAIL);
        for (int i = 2; i < LAYERS; i++) {
            Y[i] = Y[i - 1] + area / X[i - 1];
            X[i] = StrictMath.sqrt(-2 * StrictMath.log(Y[i]));
        }
        Y[LAYERS] = 1;
    }

    private Ziggurat() {}

    private static double density(double x) {
        return StrictMath.exp(-x * x / 2);
    }

    /** Area of every layer: the rectangle up to the tail, and the tail. */
    private static double area() {
        double tail = StrictMath.sqrt(Math.PI / 2) * Erf.erfc(TAIL / StrictMath.sqrt(2));
        return TAIL * density(TAIL) + tail;
    }

    /** How far the topmost layer is from closing at the top of the density. */
    static double gapAtTop() {
        return Y[LAYERS - 1] + area() / X[LAYERS - 1] - 1;
    }

    static double normal(SplittableRandom random) {
        while (true) {
            long bits = random.nextLong();
            int layer = (int) bits & (LAYERS - 1);
            double place = (bits >> (Long.SIZE - 1 - PLACE_BITS)) * TO_UNIT;
            double x = place * X[layer];
            if (Math.abs(x) < X[layer + 1]) {
                return x;
            }
            if (layer == 0) {
                return Math.copySign(tail(random), place);
            }
            if (Y[layer] + random.nextDouble() * (Y[layer + 1] - Y[layer]) < density(x)) {
                return x;
            }
        }
    }

    /** A draw beyond the layers. */
    private static double tail(SplittableRandom random) {
        while (true) {
            double beyond = -StrictMath.log(1 - random.nextDouble()) / TAIL;
            double bound = -StrictMath.log(1 - random.nextDouble());
            if (2 * bound > beyond * beyond) {
                return TAIL + beyond;
            }
        }
    }
}
