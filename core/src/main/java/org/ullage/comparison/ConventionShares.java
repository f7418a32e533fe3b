package org.ullage.comparison;

import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * What each convention is worth in the difference of two methods, averaged over all orders in which the conventions could be
 * exchanged (the Shapley value). The shares add up to the difference. Immutable.
 *
 * @param shares the share of each convention in which the two methods differ
 * @see "L. S. Shapley, A value for n-person games, Contributions to the Theory of Games II, Princeton 1953"
 */
public record ConventionShares(Map<Convention, Volume> shares) implements Serializable {

    /**
     * Copies the shares, in the order of {@link Convention}.
     *
     * @param shares the share of each convention
     */
    public ConventionShares {
        shares = Collections.unmodifiableMap(new TreeMap<>(shares));
    }

    /**
     * Averages over all orders. With n conventions that differ, 2^n sizings are made; n is at most the number of {@link Convention}.
     *
     * @param job what is to be sized
     * @param first the method to start from
     * @param second the method to arrive at
     * @return the shares
     * @throws OutOfRangeException if a mixture of the two methods refuses the job, because then not every order exists
     * @throws MissingInputException if a mixture of the two methods lacks an input
     */
    public static ConventionShares between(SizingJob job, Method first, Method second) {
        List<Convention> differing =
                ConventionWalk.differing(first, second, job.vessel().kind());
        // Refused here if the second cannot do the job: half a mixture with it may not even be a method.
        second.size(job);
        double[] volumes = new double[1 << differing.size()];
        for (int mixture = 0; mixture < volumes.length; mixture++) {
            volumes[mixture] = mixed(first, second, differing, mixture)
                    .size(job)
                    .requiredVolume()
                    .si();
        }
        Map<Convention, Volume> shares = new TreeMap<>();
        for (int i = 0; i < differing.size(); i++) {
            shares.put(differing.get(i), Volume.ofSi(share(volumes, i, differing.size())));
        }
        return new ConventionShares(shares);
    }

    /** The mixture with the conventions of the second method whose bits are set. */
    private static Method mixed(Method first, Method second, List<Convention> differing, int mixture) {
        Method method = first;
        for (int i = 0; i < differing.size(); i++) {
            if ((mixture >> i & 1) == 1) {
                method = differing.get(i).taken(method, second);
            }
        }
        return method;
    }

    /** Weighted mean of what exchanging one convention adds to every mixture without it. */
    private static double share(double[] volumes, int convention, int count) {
        int bit = 1 << convention;
        double share = 0;
        for (int mixture = 0; mixture < volumes.length; mixture++) {
            if ((mixture & bit) == 0) {
                share += weight(Integer.bitCount(mixture), count) * (volumes[mixture | bit] - volumes[mixture]);
            }
        }
        return share;
    }

    /** Part of all orders in which exactly these many others come first: s! (n - s - 1)! / n! */
    private static double weight(int before, int count) {
        double weight = 1.0 / count;
        for (int i = 1; i <= before; i++) {
            weight *= (double) i / (count - i);
        }
        return weight;
    }
}
