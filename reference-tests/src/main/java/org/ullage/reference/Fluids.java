package org.ullage.reference;

import org.ullage.fluids.Water;
import org.ullage.loop.LoopFluid;

/** Finds the fluid that a question means. */
final class Fluids {

    private Fluids() {}

    /** The fluid that is named, or one with the two specific volumes that the source gives; plain water if nothing is said. */
    static LoopFluid of(Question question) {
        if (question.has(Input.COLD_SPECIFIC_VOLUME)) {
            return new GivenVolumes(
                    question.temperature(Input.COLD),
                    question.specificVolume(Input.COLD_SPECIFIC_VOLUME),
                    question.temperature(Input.HOT),
                    question.specificVolume(Input.HOT_SPECIFIC_VOLUME));
        }
        return question.has(Input.FLUID) ? named(question.text(Input.FLUID)) : Water.IAPWS_IF97;
    }

    private static LoopFluid named(String name) {
        return switch (name) {
            case "water", "water/if97" -> Water.IAPWS_IF97;
            case "water/kell" -> Water.KELL_1975;
            case "water/table" -> Water.SATURATED_TABLE;
            default -> throw new IllegalStateException("no fluid is called " + name);
        };
    }
}
