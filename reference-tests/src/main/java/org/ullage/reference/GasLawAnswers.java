package org.ullage.reference;

import java.util.Optional;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/** What this library says about a vessel whose water is known, without a sizing method. */
final class GasLawAnswers {

    private GasLawAnswers() {}

    static Optional<Answer> to(Question question) {
        return Optional.of(
                switch (question.asked()) {
                    case REQUIRED_VOLUME -> Answer.of(requiredVolume(question, question.volume(Input.WATER)));
                    case FINAL_PRESSURE -> Answer.of(finalPressure(question));
                    case COLD_PRESSURE -> Answer.of(coldPressure(question));
                    case ACCEPTANCE_FACTOR ->
                        Answer.ofNumber(GasLaw.waterShare(
                                question.absolutePressure(Input.PRECHARGE).si(),
                                question.absolutePressure(Input.FINAL_PRESSURE).si()));
                    default ->
                        Answer.ofNumber(
                                requiredVolume(question, Volume.cubicMetres(1)).si());
                });
    }

    private static Volume requiredVolume(Question question, Volume water) {
        return GasLaw.nominalVolume(
                water, charge(question), cold(question), question.absolutePressure(Input.FINAL_PRESSURE));
    }

    private static GaugePressure finalPressure(Question question) {
        return GasLaw.finalPressure(
                        question.volume(Input.NOMINAL_VOLUME),
                        question.volume(Input.WATER),
                        charge(question),
                        cold(question))
                .gauge(question.atmosphere());
    }

    private static GaugePressure coldPressure(Question question) {
        AbsolutePressure air = question.atmosphere();
        double pascals = ColdPressureRule.staticHeadPlus(question.pressureDifference(Input.TOP_MARGIN), Source.given())
                .pascals(question.length(Input.STATIC_HEAD).si(), 0, air.si());
        return AbsolutePressure.ofSi(pascals).gauge(air);
    }

    private static AbsolutePressure cold(Question question) {
        return question.absolutePressure(Input.COLD_PRESSURE);
    }

    /** Not given: charged to the cold pressure. */
    private static AbsolutePressure charge(Question question) {
        return question.has(Input.PRECHARGE) ? question.absolutePressure(Input.PRECHARGE) : cold(question);
    }
}
