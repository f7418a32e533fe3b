package org.ullage.support;

import java.util.List;
import org.ullage.loop.PipeSize;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/** Taper pipe threads of steel pipe in inch sizes, by threads per inch. */
enum PipeThread {
    T27(27, List.of("1/8"), Standard.B1_20_1),
    T18(18, List.of("1/4", "3/8"), Standard.B1_20_1),
    T14(14, List.of("1/2", "3/4"), Standard.B1_20_1),
    T11_5(11.5, List.of("1", "1-1/4", "1-1/2", "2"), Standard.B1_20_1),
    T8(8, List.of("2-1/2", "3", "3-1/2", "4", "5", "6", "8", "10", "12"), Standard.B1_20_1);

    /** Depth of the truncated thread as a share of the pitch, at most. */
    static final Constant DEPTH = new Constant("h/p", 0.8, "1", Standard.B1_20_1);

    /** The document, in a class of its own because the constants above need it first. */
    private static final class Standard {
        private static final Source B1_20_1 = Source.fromMemory(
                "ASME B1.20.1, Pipe Threads, General Purpose (Inch)",
                "NPT: threads per inch and depth of thread, h = 0.8 p");
    }

    private final double threadsPerInch;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> sizes;

    PipeThread(double threadsPerInch, List<String> sizes, Source unused) {
        this.threadsPerInch = threadsPerInch;
        this.sizes = sizes;
    }

    static PipeThread of(PipeSize size) {
        boolean inchSteel = size.standard().name().startsWith("ASME_B36_10");
        for (PipeThread thread : values()) {
            if (inchSteel && thread.sizes.contains(size.size())) {
                return thread;
            }
        }
        throw new OutOfRangeException(
                "threaded pipe",
                size.name(),
                "ASME B36.10 steel in a size with an NPT thread known here, 1/8 to 12",
                "give outside diameter and wall at the root of the thread to StubSection.of");
    }

    double threadsPerInch() {
        return threadsPerInch;
    }

    Length depth() {
        return Length.of(DEPTH.value() / threadsPerInch, Units.INCH);
    }
}
