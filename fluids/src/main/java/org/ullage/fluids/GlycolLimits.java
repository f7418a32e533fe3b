package org.ullage.fluids;

import java.util.List;
import java.util.Optional;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.workings.Caution;

/** Published upper temperatures of glycol solutions. */
final class GlycolLimits {

    static final TemperatureLimit SERVICE = new TemperatureLimit(
            "upper end of the usual span of application", Temperature.fahrenheit(225), GlycolSources.SERVICE_SPAN);

    static final TemperatureLimit DEGRADATION = new TemperatureLimit(
            "degradation of the fluid rises above this bulk temperature",
            Temperature.fahrenheit(250),
            GlycolSources.DEGRADATION);

    /** The lower end of the 160 to 170 degC that are remembered. */
    static final TemperatureLimit SOLAR_GRADE = new TemperatureLimit(
            "typical limit of solar-grade inhibited propylene glycol",
            Temperature.celsius(160),
            GlycolSources.SOLAR_GRADE);

    private GlycolLimits() {}

    static List<TemperatureLimit> of(Glycol glycol) {
        return glycol == Glycol.PROPYLENE ? List.of(SERVICE, DEGRADATION, SOLAR_GRADE) : List.of(SERVICE, DEGRADATION);
    }

    static Optional<Caution> caution(Glycol glycol, Temperature temperature) {
        if (temperature.compareTo(DEGRADATION.temperature()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Caution(
                "At " + temperature.text(Units.CELSIUS) + " " + glycol.text() + " degrades faster: "
                        + DEGRADATION.temperature().text(Units.FAHRENHEIT)
                        + " is where it begins to rise; follow the product's data sheet.",
                DEGRADATION.source()));
    }
}
