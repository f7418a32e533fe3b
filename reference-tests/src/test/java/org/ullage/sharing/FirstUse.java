package org.ullage.sharing;

import java.util.List;
import java.util.zip.CRC32C;

/** Asks everything once; public, so that it can be called in another class loader. */
public final class FirstUse {

    private FirstUse() {}

    /** Every question with a sum over the bits of its answer. */
    public static List<String> sums() {
        return Askings.all().stream()
                .map(asking -> asking.name() + " " + sum(Stored.bytes(asking.ask())))
                .toList();
    }

    private static long sum(byte[] bytes) {
        CRC32C sum = new CRC32C();
        sum.update(bytes);
        return sum.getValue();
    }
}
