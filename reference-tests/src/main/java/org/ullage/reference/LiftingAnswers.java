package org.ullage.reference;

import java.util.Optional;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.support.Grip;
import org.ullage.support.HandPosition;
import org.ullage.support.LiftLimit;
import org.ullage.support.LiftingFilter;
import org.ullage.support.LiftingSpell;

/** What this library says one person may lift. What a question leaves open is ideal. */
final class LiftingAnswers {

    private static final Length IDEAL_REACH = Length.metres(0.25);
    private static final Length IDEAL_HEIGHT = Length.metres(0.75);

    private LiftingAnswers() {}

    static Optional<Answer> to(Question question) {
        return Optional.of(
                switch (question.asked()) {
                    case LIFTING_LIMIT -> Answer.of(limit(question));
                    case LIFTING_MULTIPLIER -> Answer.ofNumber(limit(question).dividedBy(ideal().atOrigin()));
                    default -> Answer.of(filter(question));
                });
    }

    private static LiftLimit ideal() {
        HandPosition hands = HandPosition.ahead(IDEAL_REACH, IDEAL_HEIGHT);
        return new LiftLimit(hands, hands, 0, LiftingSpell.UP_TO_1_HOUR, Grip.GOOD);
    }

    private static Mass limit(Question question) {
        Length reach = length(question, Input.REACH, IDEAL_REACH);
        Length height = length(question, Input.HAND_HEIGHT, IDEAL_HEIGHT);
        return new LiftLimit(
                        new HandPosition(reach, height, number(question, Input.TURN)),
                        HandPosition.ahead(reach, length(question, Input.END_HEIGHT, height)),
                        number(question, Input.LIFTS_PER_MINUTE),
                        spell(question),
                        question.has(Input.GRIP) ? Named.byConstant(Grip.class, question.text(Input.GRIP)) : Grip.GOOD)
                .atOrigin();
    }

    private static LiftingSpell spell(Question question) {
        String hours = question.has(Input.LIFTING_HOURS) ? question.text(Input.LIFTING_HOURS) : "1";
        return switch (hours) {
            case "1" -> LiftingSpell.UP_TO_1_HOUR;
            case "2" -> LiftingSpell.UP_TO_2_HOURS;
            case "8" -> LiftingSpell.UP_TO_8_HOURS;
            default -> throw new IllegalStateException("no table goes up to " + hours + " hours");
        };
    }

    private static Mass filter(Question question) {
        LiftingFilter filter = new LiftingFilter(
                Named.byConstant(LiftingFilter.Zone.class, question.text(Input.HAND_ZONE)),
                false,
                Named.byConstant(LiftingFilter.People.class, question.text(Input.PEOPLE)));
        return filter.limit(number(question, Input.LIFTS_PER_MINUTE));
    }

    private static Length length(Question question, Input input, Length otherwise) {
        return question.has(input) ? question.length(input) : otherwise;
    }

    private static double number(Question question, Input input) {
        return question.has(input) ? question.number(input) : 0;
    }
}
