package org.ullage.fluids;

import java.io.Serializable;

/** What a {@link GlycolSolution} is written as. */
record GlycolSolutionForm(Glycol glycol, GlycolModel model, Concentration concentration) implements Serializable {

    private Object readResolve() {
        return new GlycolSolution(glycol, model, concentration);
    }
}
