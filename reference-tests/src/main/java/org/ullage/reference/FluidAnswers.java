package org.ullage.reference;

import java.util.Optional;
import org.ullage.fluids.Iapws97;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/** What this library's fluid models say. */
final class FluidAnswers {

    private static final String AT_SATURATION = "saturation";

    private FluidAnswers() {}

    static Optional<Answer> to(Question question) {
        return switch (question.asked()) {
            case SPECIFIC_VOLUME -> Optional.of(Answer.of(specificVolume(question, Input.TEMPERATURE)));
            case DENSITY ->
                Optional.of(
                        Answer.of(specificVolume(question, Input.TEMPERATURE).density()));
            case SATURATION_PRESSURE ->
                Optional.of(
                        Answer.of(QuestionFluid.of(question).vapourPressure(question.temperature(Input.TEMPERATURE))));
            case SATURATION_TEMPERATURE ->
                Optional.of(Answer.of(Temperature.kelvins(Iapws97.saturationTemperature(
                        question.absolutePressure(Input.PRESSURE).si()))));
            case SPECIFIC_ENTHALPY ->
                Optional.of(Answer.ofNumber(Iapws97.specificEnthalpy(kelvins(question), pascals(question))));
            case HEAT_CAPACITY ->
                Optional.of(Answer.ofNumber(Iapws97.specificHeatCapacity(kelvins(question), pascals(question))));
            case EXPANSION_FRACTION -> Optional.of(Answer.ofNumber(expansionFraction(question)));
            case NET_EXPANSION ->
                Optional.of(Answer.of(Volume.ofSi(contents(question).si() * expansionFraction(question))));
            case HOT_VOLUME ->
                Optional.of(Answer.of(Volume.ofSi(contents(question).si() * (1 + expansionFraction(question)))));
            default -> Optional.empty();
        };
    }

    private static double expansionFraction(Question question) {
        return specificVolume(question, Input.HOT).si()
                        / specificVolume(question, Input.COLD).si()
                - 1;
    }

    private static Volume contents(Question question) {
        return question.has(Input.CONTENTS)
                ? question.volume(Input.CONTENTS)
                : Volume.ofSi(question.mass(Input.MASS).si()
                        * specificVolume(question, Input.COLD).si());
    }

    private static SpecificVolume specificVolume(Question question, Input temperature) {
        LoopFluid fluid = QuestionFluid.of(question);
        Temperature at = question.temperature(temperature);
        return question.text(Input.PRESSURE).equals(AT_SATURATION)
                ? fluid.specificVolume(at, fluid.vapourPressure(at))
                : fluid.specificVolume(at, question.absolutePressure(Input.PRESSURE));
    }

    private static double kelvins(Question question) {
        return question.temperature(Input.TEMPERATURE).si();
    }

    private static double pascals(Question question) {
        return question.absolutePressure(Input.PRESSURE).si();
    }
}
