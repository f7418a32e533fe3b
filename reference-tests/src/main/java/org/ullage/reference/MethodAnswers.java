package org.ullage.reference;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** What this library's sizing methods say. */
final class MethodAnswers {

    private MethodAnswers() {}

    static Optional<Answer> to(Question question) {
        return method(question).flatMap(method -> answer(method, question));
    }

    /** The sizing that the question describes; empty if this library has no such method. */
    static Optional<Sizing> sizing(Question question) {
        return method(question).map(method -> size(method, question));
    }

    private static Optional<Method> method(Question question) {
        String name = question.text(Input.METHOD);
        return Methods.all().stream()
                .filter(method -> method.name().equals(name))
                .findFirst();
    }

    private static Optional<Answer> answer(Method method, Question question) {
        return switch (question.asked()) {
            case EXPANSION_FRACTION -> Optional.of(Answer.ofNumber(expansionFraction(method, question)));
            case REQUIRED_VOLUME -> Optional.of(Answer.of(size(method, question).requiredVolume()));
            case NET_EXPANSION -> Optional.of(Answer.of(size(method, question).expansionVolume()));
            case ACCEPTANCE_VOLUME ->
                Optional.of(Answer.of(size(method, question).acceptanceVolume()));
            case COLD_PRESSURE -> Optional.of(Answer.of(size(method, question).coldPressure()));
            case FINAL_PRESSURE -> Optional.of(Answer.of(size(method, question).finalPressure()));
            default -> Optional.empty();
        };
    }

    /** The net expansion of one cubic metre; what the question leaves open is filled in so that the water stays liquid. */
    private static double expansionFraction(Method method, Question question) {
        Question sized = question.with(Input.CONTENTS, "1 m3");
        sized = withDefault(sized, Input.VESSEL, VesselKind.DIAPHRAGM.word());
        sized = withDefault(sized, Input.COLD_PRESSURE, "10 bar");
        sized = withDefault(sized, Input.FINAL_PRESSURE, "20 bar");
        return size(method, sized).expansionVolume().si();
    }

    private static Question withDefault(Question question, Input input, String value) {
        return question.has(input) ? question : question.with(input, value);
    }

    private static Sizing size(Method method, Question question) {
        Temperature cold = question.has(Input.COLD) ? question.temperature(Input.COLD) : null;
        Temperature hot = question.has(Input.HOT) ? question.temperature(Input.HOT) : null;
        return method.size(new SizingJob(
                loop(question),
                VesselType.of(vesselKind(question)),
                LoopTemperatures.between(cold, hot),
                pressures(question)));
    }

    private static VesselKind vesselKind(Question question) {
        String word = question.text(Input.VESSEL);
        return Arrays.stream(VesselKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no kind of vessel is called " + word));
    }

    private static Loop loop(Question question) {
        Loop loop = ordinaryLoop(question);
        return question.has(Input.COLLECTORS)
                ? loop.stagnating(new StagnationContents(
                        question.volume(Input.COLLECTORS), question.volume(Input.COLLECTOR_PIPE)))
                : loop;
    }

    private static Loop ordinaryLoop(Question question) {
        Loop.PipeStep loop = Loop.withContents(question.volume(Input.CONTENTS));
        LoopFluid fluid = QuestionFluid.of(question);
        if (!question.has(Input.PIPE)) {
            return loop.pipeNotStated().filledWith(fluid);
        }
        String pipe = question.text(Input.PIPE);
        return switch (pipe) {
            case "steel" -> loop.steel().filledWith(fluid);
            case "copper" -> loop.copper().filledWith(fluid);
            case "none" -> loop.rigid().filledWith(fluid);
            default -> throw new IllegalStateException("no pipe is called " + pipe);
        };
    }

    private static PressureInputs pressures(Question question) {
        return PressureInputs.NONE
                .withColdPressure(gauge(question, Input.COLD_PRESSURE))
                .withFinalPressure(gauge(question, Input.FINAL_PRESSURE))
                .withPreCharge(gauge(question, Input.PRECHARGE))
                .withReliefSetting(gauge(question, Input.RELIEF_SETTING))
                .withStaticHead(question.has(Input.STATIC_HEAD) ? question.length(Input.STATIC_HEAD) : null)
                .withAtmosphere(question.has(Input.ATMOSPHERE) ? question.atmosphere() : null);
    }

    private static @Nullable GaugePressure gauge(Question question, Input input) {
        return question.has(input) ? question.gaugePressure(input) : null;
    }
}
