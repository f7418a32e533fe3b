package org.ullage.reference;

import java.util.Optional;

/** This library, put to the reference cases through its public API. */
public final class UllageImplementation implements ImplementationUnderTest {

    /** Makes one. */
    public UllageImplementation() {}

    @Override
    public Optional<Answer> answer(Question question) {
        if (question.has(Input.METHOD)) {
            return MethodAnswers.to(question);
        }
        return switch (question.asked()) {
            case REQUIRED_VOLUME, FINAL_PRESSURE, COLD_PRESSURE, ACCEPTANCE_FACTOR, PRESSURE_FACTOR ->
                GasLawAnswers.to(question);
            default -> FluidAnswers.to(question);
        };
    }
}
