package org.ullage.support;

import java.io.Serializable;
import org.ullage.loop.PipeSize;
import org.ullage.provenance.Source;
import org.ullage.quantity.Area;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.SectionModulus;

/**
 * The weakest ring of a pipe stub: the plain pipe, or what is left below the root of its thread. Immutable.
 *
 * @param name in words
 * @param outside outside diameter of the ring
 * @param bore its inside diameter, above zero and less than the outside diameter
 * @param source where the two come from
 */
public record StubSection(String name, Length outside, Length bore, Source source) implements Serializable {

    /**
     * Checks that there is a ring.
     *
     * @param name in words
     * @param outside outside diameter
     * @param bore inside diameter
     * @param source where the two come from
     * @throws OutOfRangeException if the bore is zero, negative or not less than the outside diameter
     */
    public StubSection {
        if (bore.si() <= 0 || bore.compareTo(outside) >= 0) {
            throw new OutOfRangeException(
                    "bore of " + name,
                    SupportText.both(bore),
                    "above zero and less than the outside diameter " + SupportText.both(outside),
                    "take a thicker wall; a thread may leave nothing of a thin one");
        }
    }

    /**
     * A ring of the caller's.
     *
     * @param name in words
     * @param outside outside diameter
     * @param wall wall thickness, above zero and less than half the outside diameter
     * @return the section
     * @throws OutOfRangeException if the wall is zero, negative or leaves no bore
     */
    public static StubSection of(String name, Length outside, Length wall) {
        return new StubSection(name, outside, outside.minus(wall.times(2)), Source.given());
    }

    /**
     * A pipe without a thread.
     *
     * @param size a size of a pipe standard
     * @return its nominal ring
     */
    public static StubSection plain(PipeSize size) {
        return new StubSection(size.name(), size.outside(), size.bore(), size.source());
    }

    /**
     * A steel pipe at the root of its taper thread (NPT): the outside diameter less twice the depth of thread, 0.8 of the pitch each. At
     * the end of the full thread the root of the taper is 1.475 pitches below the outside diameter, so 1.6 is on the safe side there.
     *
     * @param size a size of ASME B36.10
     * @return what is left of its nominal ring
     * @throws OutOfRangeException if the size has no NPT thread known here or the thread leaves no wall
     */
    public static StubSection threaded(PipeSize size) {
        PipeThread thread = PipeThread.of(size);
        Length root = size.outside().minus(thread.depth().times(2));
        Source source = Source.fromMemory(
                PipeThread.DEPTH.source().document() + "; pipe by "
                        + size.standard().title(),
                "root of the NPT thread: outside diameter - 2 x 0.8 / " + thread.threadsPerInch() + " in");
        return new StubSection(size.name() + " at the root of its NPT thread", root, size.bore(), source);
    }

    /**
     * Section modulus of the ring.
     *
     * @return pi (D^4 - d^4) / (32 D)
     */
    public SectionModulus modulus() {
        double outer = 0.5 * outside.si();
        double inner = 0.5 * bore.si();
        double secondMoment = 0.5 * 0.5 * Math.PI * (outer * outer * outer * outer - inner * inner * inner * inner);
        return SectionModulus.ofSi(secondMoment / outer);
    }

    /**
     * Metal area of the ring.
     *
     * @return pi / 4 (D^2 - d^2)
     */
    public Area area() {
        double outer = 0.5 * outside.si();
        double inner = 0.5 * bore.si();
        return Area.ofSi(Math.PI * (outer * outer - inner * inner));
    }
}
