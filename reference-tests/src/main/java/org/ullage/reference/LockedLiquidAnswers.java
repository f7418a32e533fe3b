package org.ullage.reference;

import java.util.Optional;
import org.ullage.loop.LoopFluid;
import org.ullage.operation.LockedLiquid;
import org.ullage.operation.PipeWall;
import org.ullage.operation.WallMaterial;
import org.ullage.provenance.Source;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.Stress;

/** What this library says about liquid that is locked in. */
final class LockedLiquidAnswers {

    private LockedLiquidAnswers() {}

    static Optional<Answer> to(Question question) {
        LockedLiquid liquid = LockedLiquid.rigid(
                fluid(question), question.temperature(Input.TEMPERATURE), question.absolutePressure(Input.PRESSURE));
        return Optional.of(Answer.ofNumber(
                switch (question.asked()) {
                    case EXPANSIVITY -> liquid.expansionSi();
                    case COMPRESSIBILITY -> liquid.compressibilitySi();
                    default ->
                        question.has(Input.BORE) ? liquid.in(wall(question)).slopeSi() : liquid.slopeSi();
                }));
    }

    private static LoopFluid fluid(Question question) {
        return question.has(Input.EXPANSIVITY)
                ? new GivenDerivatives(
                        question.temperature(Input.TEMPERATURE),
                        question.absolutePressure(Input.PRESSURE),
                        coefficient(question, Input.EXPANSIVITY, Measure.PER_KELVIN),
                        coefficient(question, Input.COMPRESSIBILITY, Measure.PER_PASCAL))
                : QuestionFluid.of(question);
    }

    private static double coefficient(Question question, Input input, Measure measure) {
        return question.read(input, measure::read);
    }

    private static PipeWall wall(Question question) {
        WallMaterial material = new WallMaterial(
                "wall",
                question.read(Input.ELASTICITY, Stress::parse),
                question.read(Input.LINEAR_EXPANSION, LinearExpansion::parse),
                question.number(Input.POISSON),
                Source.given());
        return new PipeWall(material, question.length(Input.BORE), question.length(Input.WALL));
    }
}
