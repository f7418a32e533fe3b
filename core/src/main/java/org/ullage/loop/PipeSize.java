package org.ullage.loop;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.Volume;

/**
 * A size of a pipe standard. Immutable.
 *
 * @param standard the standard
 * @param size the nominal size as the standard writes it
 * @param outside outside diameter
 * @param wall wall thickness: nominal, average or minimum as the {@linkplain PipeStandard#note() standard's note} says
 * @param source where the two come from
 */
public record PipeSize(PipeStandard standard, String size, Length outside, Length wall, Source source)
        implements Serializable {

    /**
     * Standard and size.
     *
     * @return such as {@code ASTM B88 type L 3/4}
     */
    public String name() {
        return standard.title() + " " + size;
    }

    /**
     * The inside diameter: outside diameter less twice the wall.
     *
     * @return the bore
     */
    public Length bore() {
        return Pipe.bore(name(), outside, wall);
    }

    /**
     * The size as a pipe.
     *
     * @return name, bore, material and source
     */
    public Pipe pipe() {
        return new Pipe(name(), bore(), standard.material(), source);
    }

    /**
     * Fluid in a length of this size.
     *
     * @param length zero or more
     * @return the volume
     * @throws org.ullage.quantity.OutOfRangeException if the length is negative
     */
    public Volume contents(Length length) {
        return pipe().contents(length);
    }
}
