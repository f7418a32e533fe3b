package org.ullage.reference;

import java.util.List;
import java.util.Optional;
import org.ullage.loop.Loop;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/** What this library says about a vessel whose water or gas is known, without a sizing method. */
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
        return question.has(Input.GAS_VOLUME) ? loopPressure(question) : vesselPressure(question);
    }

    /** The loop gives off what it must, and the gas, whose volume is known when cold, takes it in. */
    private static GaugePressure loopPressure(Question question) {
        Volume nominal = question.volume(Input.NOMINAL_VOLUME);
        AbsolutePressure air = question.atmosphere();
        AbsolutePressure charge = AbsolutePressure.ofSi(
                cold(question).si() * question.volume(Input.GAS_VOLUME).dividedBy(nominal));
        InstalledVessel vessel = InstalledVessel.of("vessel", nominal, charge.gauge(air));
        Loop loop = Loop.withContents(question.volume(Input.CONTENTS)).rigid().filledWith(QuestionFluid.of(question));
        Reading fill = new Reading(question.gaugePressure(Input.COLD_PRESSURE), question.temperature(Input.COLD));
        return LoopInUse.of(loop, new VesselBank(List.of(vessel), air), fill)
                .curve()
                .pressure(question.temperature(Input.HOT));
    }

    private static GaugePressure vesselPressure(Question question) {
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
