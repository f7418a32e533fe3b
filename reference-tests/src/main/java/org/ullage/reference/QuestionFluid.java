package org.ullage.reference;

import org.ullage.fluids.Fluids;
import org.ullage.fluids.Water;
import org.ullage.loop.LoopFluid;

/** Finds the fluid that a question means. */
final class QuestionFluid {

    private QuestionFluid() {}

    /** The fluid that is named, or one with the two specific volumes that the source gives; plain water if nothing is said. */
    static LoopFluid of(Question question) {
        if (question.has(Input.COLD_SPECIFIC_VOLUME)) {
            return new GivenVolumes(
                    question.temperature(Input.COLD),
                    question.specificVolume(Input.COLD_SPECIFIC_VOLUME),
                    question.temperature(Input.HOT),
                    question.specificVolume(Input.HOT_SPECIFIC_VOLUME));
        }
        return question.has(Input.FLUID) ? Fluids.parse(question.text(Input.FLUID)) : Water.IAPWS_IF97;
    }
}
