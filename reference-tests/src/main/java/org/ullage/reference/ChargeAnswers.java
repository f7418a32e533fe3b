package org.ullage.reference;

import java.util.Optional;
import org.ullage.charge.ChargeAtTemperature;
import org.ullage.charge.ChargeReading;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeClass;
import org.ullage.charge.GaugeClasses;
import org.ullage.quantity.GaugePressure;

/** What this library says about a charge and the gauge that shows it. */
final class ChargeAnswers {

    private ChargeAnswers() {}

    static Optional<Answer> to(Question question) {
        return Optional.of(
                switch (question.asked()) {
                    case CHARGE_READING -> Answer.of(chargeReading(question));
                    case GAUGE_ERROR -> Answer.of(gauge(question).errorAt(question.gaugePressure(Input.READING)));
                    default -> Answer.ofNumber(gauge(question).errorOfReading(question.gaugePressure(Input.READING)));
                });
    }

    private static GaugePressure chargeReading(Question question) {
        ChargeReading set = new ChargeReading(
                question.gaugePressure(Input.PRECHARGE), question.temperature(Input.CHARGED_AT), question.atmosphere());
        return ChargeAtTemperature.of(set, question.temperature(Input.GAS_TEMPERATURE))
                .read()
                .pressure();
    }

    private static Gauge gauge(Question question) {
        String name = question.text(Input.GAUGE_CLASS);
        GaugeClass accuracy = Named.of(GaugeClasses.all(), GaugeClass::name, name);
        return Gauge.of(GaugePressure.bar(0), question.gaugePressure(Input.SCALE_END), accuracy);
    }
}
