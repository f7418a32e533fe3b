package org.ullage.reference;

import java.util.Optional;
import org.ullage.quantity.Mass;
import org.ullage.support.Asce705To716;
import org.ullage.support.ContainedFluid;
import org.ullage.support.SeismicForce;
import org.ullage.support.ShellEstimate;
import org.ullage.support.VesselWeight;

/** What this library says about the weight of a vessel and the earthquake's share of it. */
final class WeightAnswers {

    private WeightAnswers() {}

    static Optional<Answer> to(Question question) {
        return Optional.of(
                switch (question.asked()) {
                    case EMPTY_MASS -> Answer.of(weight(question).empty());
                    case WATER_MASS ->
                        Answer.of(ContainedFluid.WATER.density().times(question.volume(Input.NOMINAL_VOLUME)));
                    case WATERLOGGED_MASS -> Answer.of(weight(question).waterlogged());
                    case SUPPORTED_MASS -> Answer.of(weight(question).twiceFilled());
                    default -> Answer.ofNumber(seismicCoefficient(question));
                });
    }

    private static VesselWeight weight(Question question) {
        ShellEstimate shell =
                new ShellEstimate(question.volume(Input.NOMINAL_VOLUME), question.gaugePressure(Input.RATED_PRESSURE));
        return new VesselWeight(shell.nominal(), shell.shellMass(), ContainedFluid.WATER);
    }

    /** A part of the weight, whatever the weight. */
    private static double seismicCoefficient(Question question) {
        Asce705To716 rule = new Asce705To716(
                question.number(Input.AMPLIFICATION),
                question.number(Input.RESPONSE),
                question.number(Input.HEIGHT_RATIO));
        return new SeismicForce(
                        rule,
                        Mass.kilograms(1),
                        question.number(Input.GROUND_MOTION),
                        question.number(Input.IMPORTANCE))
                .coefficient();
    }
}
