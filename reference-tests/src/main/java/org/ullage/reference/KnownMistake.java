package org.ullage.reference;

import java.util.Optional;
import java.util.function.Function;

/**
 * A mistake that is met in practice, as a calculation that makes it: right in all else, so that it shows what an implementation with this
 * mistake would answer. {@link MistakeSearch} compares.
 */
public enum KnownMistake implements ImplementationUnderTest {
    /** Gauge pressures go into the gas law of the vessel. */
    GAUGE_FOR_ABSOLUTE("takes gauge for absolute pressures", MistakenAnswers::byGaugePressures),
    /** Gauge pressures go into the gas law when a charge is read at another temperature. */
    GAUGE_FOR_ABSOLUTE_IN_CHARGE(
            "takes gauge for absolute pressures when a charge is read at another temperature",
            MistakenAnswers::chargeByGaugePressure),
    /** The temperatures of the same gas law are not counted from absolute zero. */
    CELSIUS_FOR_KELVIN(
            "takes degrees Celsius for kelvins when a charge is read at another temperature",
            MistakenAnswers::chargeByCelsius),
    /** The pipe does not grow. */
    PIPE_TERM_LOST("loses the pipe term", MistakenAnswers::inRigidPipe),
    /** Degrees Fahrenheit meet a coefficient per kelvin. */
    FAHRENHEIT_RISE(
            "lets the pipe grow by degrees Fahrenheit with a coefficient per kelvin",
            MistakenAnswers::pipeByFahrenheit),
    /** More glycol than was meant. */
    GLYCOL_BY_VOLUME("takes mass percent of glycol for volume percent", MistakenAnswers::glycolByVolume),
    /** Cold and hot density change places in the quotient. */
    SHARE_OF_HOT_CONTENTS("takes the expansion as a share of the hot contents", MistakenAnswers::expansionOfHot),
    /** The vessel is as large as the water that goes into it. */
    ACCEPTANCE_FOR_SIZE("takes what the vessel must take in for its size", MistakenAnswers::acceptanceForSize),
    /** Acceptance times the share that is its divisor. */
    MULTIPLIED_BY_SHARE("multiplies by the acceptance factor in place of dividing", MistakenAnswers::multipliedByShare),
    /** The method's reserve of water is not taken in. */
    RESERVE_LEFT_OUT("leaves out the water reserve", MistakenAnswers::withoutReserve),
    /** The margin below the valve is not kept. */
    VALVE_FOR_FINAL_PRESSURE("takes the relief setting for the final pressure", MistakenAnswers::finalAtTheValve),
    /** A tank whose gas begins at the pressure of the air is charged like a diaphragm vessel. */
    DIAPHRAGM_FOR_PLAIN_STEEL("sizes a plain steel tank as a diaphragm vessel", MistakenAnswers::allDiaphragm),
    /** The class of a dial gauge is a share of its span. */
    GAUGE_CLASS_OF_READING("takes the class of a gauge as a share of its reading", MistakenAnswers::gaugeByReading),
    /** Pipe round locked liquid stretches, but does not grow with warmth. */
    WALL_DOES_NOT_GROW("leaves out the growth of the wall round locked liquid", MistakenAnswers::wallThatDoesNotGrow),
    /** A beam may sag as far as it will. */
    DEFLECTION_IGNORED("lets a beam sag without limit", MistakenAnswers::sagWithoutLimit);

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // method references without state
    private final Function<Question, Optional<Answer>> wrong;

    KnownMistake(String words, Function<Question, Optional<Answer>> wrong) {
        this.words = words;
        this.wrong = wrong;
    }

    /** What this mistake makes of a question; empty where it plays no part or makes no figure of it. */
    Optional<Answer> wrongAnswer(Question question) {
        try {
            return wrong.apply(question).filter(answer -> Double.isFinite(answer.si()));
        } catch (IllegalArgumentException noFigure) {
            return Optional.empty();
        }
    }

    /**
     * Answers as an implementation with this mistake would: wrongly where it plays a part, else as this library does.
     *
     * @param question what is asked, with its inputs
     * @return the answer
     */
    @Override
    public Optional<Answer> answer(Question question) {
        return wrongAnswer(question).or(() -> MistakenAnswers.right(question));
    }

    /**
     * What such an implementation does.
     *
     * @return such as {@code takes gauge for absolute pressures}
     */
    @Override
    public String toString() {
        return words;
    }
}
