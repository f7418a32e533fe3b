package org.ullage.reference;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.ullage.method.Sizing;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;

/** This library's answers, put wrong by one mistake; each is empty where the mistake plays no part. */
final class MistakenAnswers {

    /** So little air that a pressure counted from it is counted from vacuum. */
    private static final String NO_AIR = "0.001 Pa abs";

    private static final UllageImplementation ULLAGE = new UllageImplementation();

    private MistakenAnswers() {}

    static Optional<Answer> right(Question question) {
        return ULLAGE.answer(question);
    }

    static Optional<Answer> byGaugePressures(Question question) {
        if (!question.has(Input.METHOD)) {
            return switch (question.asked()) {
                case REQUIRED_VOLUME, PRESSURE_FACTOR, ACCEPTANCE_FACTOR, FINAL_PRESSURE ->
                    right(question.with(Input.ATMOSPHERE, NO_AIR));
                default -> Optional.empty();
            };
        }
        return resized(
                question,
                sizing -> sizing.requiredVolume().si()
                        * pressureFactor(sizing, 0)
                        / pressureFactor(sizing, sizing.atmosphere().si()));
    }

    /** Vessel for each volume of water, pressures counted from a zero so far below the air. */
    private static double pressureFactor(Sizing sizing, double belowAir) {
        double charge = sizing.job().vessel().kind() == VesselKind.PLAIN_STEEL
                ? sizing.atmosphere().si()
                : sizing.preCharge().si() + belowAir;
        return GasLaw.volumePerWater(
                charge,
                sizing.coldPressure().si() + belowAir,
                sizing.finalPressure().si() + belowAir);
    }

    static Optional<Answer> chargeByGaugePressure(Question question) {
        return chargeReading(
                question,
                set -> set
                        * question.temperature(Input.GAS_TEMPERATURE).si()
                        / question.temperature(Input.CHARGED_AT).si());
    }

    static Optional<Answer> chargeByCelsius(Question question) {
        return chargeReading(
                question,
                set -> (set + question.atmosphere().si())
                                * question.temperature(Input.GAS_TEMPERATURE).in(Units.CELSIUS)
                                / question.temperature(Input.CHARGED_AT).in(Units.CELSIUS)
                        - question.atmosphere().si());
    }

    private static Optional<Answer> chargeReading(Question question, DoubleUnaryOperator gaugeOfGauge) {
        return question.asked() == Asked.CHARGE_READING
                ? Optional.of(Answer.of(GaugePressure.ofSi(gaugeOfGauge.applyAsDouble(
                        question.gaugePressure(Input.PRECHARGE).si()))))
                : Optional.empty();
    }

    static Optional<Answer> inRigidPipe(Question question) {
        return changed(question, Input.PIPE, "none");
    }

    static Optional<Answer> pipeByFahrenheit(Question question) {
        double degreesPerKelvin = TemperatureDifference.kelvins(1).in(Units.FAHRENHEIT_DIFFERENCE);
        return inRigidPipe(question)
                .flatMap(rigid -> right(question)
                        .map(inPipe -> inPipe.withSi(rigid.si() - degreesPerKelvin * (rigid.si() - inPipe.si()))));
    }

    static Optional<Answer> glycolByVolume(Question question) {
        return question.has(Input.FLUID)
                ? changed(question, Input.FLUID, question.text(Input.FLUID).replace("mass%", "vol%"))
                : Optional.empty();
    }

    static Optional<Answer> expansionOfHot(Question question) {
        if (question.has(Input.METHOD)) {
            return Optional.empty();
        }
        return switch (question.asked()) {
            case EXPANSION_FRACTION, NET_EXPANSION ->
                right(question).map(answer -> answer.withSi(answer.si() / (1 + share(question))));
            default -> Optional.empty();
        };
    }

    private static double share(Question question) {
        return right(question.asking(Asked.EXPANSION_FRACTION)).orElseThrow().si();
    }

    static Optional<Answer> acceptanceForSize(Question question) {
        return question.has(Input.WATER) && question.asked() == Asked.REQUIRED_VOLUME
                ? Optional.of(Answer.of(question.volume(Input.WATER)))
                : resized(question, sizing -> sizing.acceptanceVolume().si());
    }

    static Optional<Answer> multipliedByShare(Question question) {
        if (question.has(Input.WATER) && question.asked() == Asked.REQUIRED_VOLUME) {
            double water = question.volume(Input.WATER).si();
            return right(question).map(answer -> answer.withSi(water * water / answer.si()));
        }
        return resized(
                question,
                sizing -> Math.pow(sizing.acceptanceVolume().si(), 2)
                        / sizing.requiredVolume().si());
    }

    static Optional<Answer> withoutReserve(Question question) {
        return resized(
                question,
                sizing -> sizing.requiredVolume().si()
                        * (1
                                - sizing.reserveVolume().si()
                                        / sizing.acceptanceVolume().si()));
    }

    static Optional<Answer> finalAtTheValve(Question question) {
        return question.has(Input.RELIEF_SETTING)
                ? right(question.with(Input.FINAL_PRESSURE, question.text(Input.RELIEF_SETTING)))
                : Optional.empty();
    }

    static Optional<Answer> allDiaphragm(Question question) {
        return question.has(Input.VESSEL) && question.text(Input.VESSEL).equals(VesselKind.PLAIN_STEEL.word())
                ? right(question.with(Input.VESSEL, VesselKind.DIAPHRAGM.word()))
                : Optional.empty();
    }

    static Optional<Answer> gaugeByReading(Question question) {
        return switch (question.asked()) {
            case GAUGE_ERROR, GAUGE_ERROR_SHARE -> changed(question, Input.SCALE_END, question.text(Input.READING));
            default -> Optional.empty();
        };
    }

    static Optional<Answer> wallThatDoesNotGrow(Question question) {
        return changed(question, Input.LINEAR_EXPANSION, "0 1/K");
    }

    static Optional<Answer> sagWithoutLimit(Question question) {
        return question.has(Input.DEFLECTION_LIMIT)
                ? right(question.without(Input.DEFLECTION_LIMIT))
                : Optional.empty();
    }

    /** The right answer to the question with one of its inputs exchanged. */
    private static Optional<Answer> changed(Question question, Input input, String value) {
        return question.has(input) && !question.text(input).equals(value)
                ? right(question.with(input, value))
                : Optional.empty();
    }

    /** A required volume made in another way of what a method's sizing holds. */
    private static Optional<Answer> resized(Question question, ToDoubleFunction<Sizing> cubicMetres) {
        boolean underPressure = question.has(Input.COLD_PRESSURE) || question.has(Input.STATIC_HEAD);
        return question.has(Input.METHOD) && question.asked() == Asked.REQUIRED_VOLUME && underPressure
                ? MethodAnswers.sizing(question)
                        .map(sizing -> Answer.of(Volume.ofSi(cubicMetres.applyAsDouble(sizing))))
                : Optional.empty();
    }
}
