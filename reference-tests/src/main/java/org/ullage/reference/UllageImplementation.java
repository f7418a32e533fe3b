package org.ullage.reference;

import java.util.Optional;
import org.ullage.loop.PipeStandard;
import org.ullage.quantity.Volume;

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
            case PIPE_CONTENTS -> Optional.of(Answer.of(pipeContents(question)));
            case CHARGE_READING, GAUGE_ERROR, GAUGE_ERROR_SHARE -> ChargeAnswers.to(question);
            case EMPTY_MASS, WATER_MASS, WATERLOGGED_MASS, SUPPORTED_MASS, SEISMIC_COEFFICIENT ->
                WeightAnswers.to(question);
            case ROD_ROOT_AREA, ROD_LOAD, BEAM_LOAD, LOAD_FACTOR, DEFLECTION_FACTOR, HANGER_SPACING ->
                SupportAnswers.to(question);
            case LIFTING_LIMIT, LIFTING_MULTIPLIER, LIFTING_FILTER -> LiftingAnswers.to(question);
            case EXPANSIVITY, COMPRESSIBILITY, LOCKED_SLOPE -> LockedLiquidAnswers.to(question);
            case REQUIRED_VOLUME, FINAL_PRESSURE, COLD_PRESSURE, ACCEPTANCE_FACTOR, PRESSURE_FACTOR ->
                GasLawAnswers.to(question);
            default -> FluidAnswers.to(question);
        };
    }

    private static Volume pipeContents(Question question) {
        return PipeStandard.named(question.text(Input.STANDARD))
                .size(question.text(Input.SIZE))
                .contents(question.length(Input.LENGTH));
    }
}
