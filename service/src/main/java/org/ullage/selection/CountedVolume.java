package org.ullage.selection;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Volume;

/**
 * The volume a vessel counts with towards what is required, see {@link Requirement}.
 *
 * @param nominal nominal volume required, or 0 if none is
 * @param water acceptance volume required, or 0 if none is
 */
record CountedVolume(long nominal, long water) {

    static CountedVolume of(Requirement requirement) {
        return new CountedVolume(exact(requirement.nominal()), exact(requirement.acceptance()));
    }

    private static long exact(@Nullable Volume volume) {
        return volume == null ? 0 : Exact.requiredVolume(volume.si());
    }

    /** What the counted volumes must add up to. */
    long required() {
        return nominal == 0 ? water : nominal;
    }

    /** What a vessel of a nominal volume and an acceptance limit counts with. */
    long of(long volume, long limit) {
        if (nominal == 0) {
            return limit;
        }
        if (water == 0 || (limit == volume && nominal >= water)) {
            return volume;
        }
        // rounded up: three vessels that exactly do must not fail for three fractions cut off
        return BigInteger.valueOf(limit)
                .multiply(BigInteger.valueOf(nominal))
                .add(BigInteger.valueOf(water - 1))
                .divide(BigInteger.valueOf(water))
                .min(BigInteger.valueOf(volume))
                .longValueExact();
    }

    /** What vessels count with together. */
    long of(Combination combination) {
        return combination.items().stream()
                .mapToLong(item -> of(
                        Exact.volume(item.nominal().si()),
                        Exact.volume(item.acceptance().si())))
                .sum();
    }
}
