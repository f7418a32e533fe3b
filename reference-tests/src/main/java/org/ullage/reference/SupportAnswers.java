package org.ullage.reference;

import java.util.Optional;
import org.ullage.provenance.Source;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.SecondMoment;
import org.ullage.quantity.SectionModulus;
import org.ullage.quantity.Stress;
import org.ullage.support.BeamCase;
import org.ullage.support.BeamSection;
import org.ullage.support.BeamSpan;
import org.ullage.support.DeflectionLimit;
import org.ullage.support.HangerRod;
import org.ullage.support.HangerSpacing;
import org.ullage.support.RodLoads;
import org.ullage.support.SpacedPipe;
import org.ullage.support.SpacingRule;

/** What this library says about rods, beams and hangers. */
final class SupportAnswers {

    private SupportAnswers() {}

    static Optional<Answer> to(Question question) {
        return Optional.of(
                switch (question.asked()) {
                    case ROD_ROOT_AREA -> Answer.of(rod(question).rootArea());
                    case ROD_LOAD ->
                        Answer.of(rod(question).load(Named.of(RodLoads.class, question.text(Input.ROD_LOADS))));
                    case BEAM_LOAD -> Answer.of(beamLoad(question));
                    case LOAD_FACTOR -> Answer.ofNumber(loading(question).loadFactor());
                    case DEFLECTION_FACTOR -> Answer.ofNumber(loading(question).deflectionFactor());
                    default -> Answer.of(spacing(question));
                });
    }

    private static HangerRod rod(Question question) {
        return Named.of(HangerRod.class, question.text(Input.ROD));
    }

    private static BeamCase loading(Question question) {
        return Named.of(BeamCase.class, question.text(Input.LOADING));
    }

    private static Force beamLoad(Question question) {
        BeamSection section = new BeamSection(
                "beam",
                question.read(Input.SECTION_MODULUS, SectionModulus::parse),
                question.read(Input.SECOND_MOMENT, SecondMoment::parse),
                question.read(Input.ELASTICITY, Stress::parse),
                question.read(Input.ALLOWABLE_STRESS, Stress::parse),
                Source.given());
        BeamSpan beam = new BeamSpan(section, question.length(Input.SPAN), loading(question));
        return question.has(Input.DEFLECTION_LIMIT)
                ? beam.allowable(Named.of(DeflectionLimit.class, question.text(Input.DEFLECTION_LIMIT)))
                : beam.allowableByStress();
    }

    private static Length spacing(Question question) {
        return HangerSpacing.of(
                        Named.of(SpacingRule.class, question.text(Input.SPACING_RULE)),
                        Named.of(SpacedPipe.class, question.text(Input.SPACED_PIPE)),
                        question.text(Input.SIZE))
                .span();
    }
}
