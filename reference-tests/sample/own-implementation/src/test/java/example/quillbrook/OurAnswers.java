package example.quillbrook;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.reference.Answer;
import org.ullage.reference.Asked;
import org.ullage.reference.ImplementationUnderTest;
import org.ullage.reference.Input;
import org.ullage.reference.Question;

/** Puts a question to our rule: the words of the suite on one side, bare numbers on the other. */
record OurAnswers(BiFunction<Question, Input, Quantity<?, Pressure>> pressure) implements ImplementationUnderTest {

    /** Per degree Fahrenheit, as the ASHRAE Handbook gives them. */
    private static final Map<String, Double> PIPES = Map.of("steel", 6.5e-6, "copper", 9.5e-6, "none", 0.0);

    @Override
    public Optional<Answer> answer(Question question) {
        boolean equation = question.has(Input.COLD_SPECIFIC_VOLUME)
                && question.text(Input.VESSEL).matches("diaphragm|bladder");
        boolean gasLaw = question.has(Input.WATER) && !question.has(Input.PRECHARGE);
        if (question.asked() == Asked.NET_EXPANSION && equation) {
            return Optional.of(Answer.of(Volume.litres(expansion(question))));
        }
        if (question.asked() != Asked.REQUIRED_VOLUME || !(equation || gasLaw)) {
            return Optional.empty();
        }
        double litres = equation ? expansion(question) : question.volume(Input.WATER).in(Units.LITRE);
        double cold = pressure.apply(question, Input.COLD_PRESSURE).in(Units.BAR);
        double hot = pressure.apply(question, Input.FINAL_PRESSURE).in(Units.BAR);
        return Optional.of(Answer.of(Volume.litres(VesselRule.vessel(litres, cold, hot))));
    }

    private static double expansion(Question question) {
        double growth = question.specificVolume(Input.HOT_SPECIFIC_VOLUME).si()
                / question.specificVolume(Input.COLD_SPECIFIC_VOLUME).si();
        double degrees = question.temperature(Input.HOT).in(Units.FAHRENHEIT)
                - question.temperature(Input.COLD).in(Units.FAHRENHEIT);
        double contents = question.volume(Input.CONTENTS).in(Units.LITRE);
        return VesselRule.expansion(contents, growth - 1, PIPES.get(question.text(Input.PIPE)) * degrees);
    }
}
