package org.ullage.fluids;

import java.util.Optional;
import org.ullage.provenance.Constant;

/** A fluid model that says how far its density may be off, as far as its source states it. */
public interface StatedUncertainty {

    /**
     * How far the density may be off.
     *
     * @return the number with its unit and source; empty if the source states none
     */
    Optional<Constant> densityUncertainty();

    /**
     * What has to be known when the model is compared with another.
     *
     * @return a phrase
     */
    String remark();
}
