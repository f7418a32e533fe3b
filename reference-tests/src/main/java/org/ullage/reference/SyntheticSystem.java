package org.ullage.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.GaugeReading;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.diagnosis.MeasuredCharge;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingPoint;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * An invented heating loop with a known fault, and what two readings on it show. The pressures come from the mass balance of {@link
 * LoopInUse} with water by IAPWS-IF97, compressible and in steel pipe, which is not the model that a diagnosis reasons with; the
 * readings get the errors of the instruments. All that varies is drawn from one seeded generator.
 */
final class SyntheticSystem {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final ReliefValve RELIEF = ReliefValve.iso4126(GaugePressure.bar(3));
    private static final double HIGHEST_KEPT_BAR = 2.7;

    private static final double CONTENTS_ERROR = 0.05;
    private static final double GAUGE_ERROR_BAR = 0.04;
    private static final double THERMOMETER_ERROR = 1;
    private static final double GAS_DRIFT_KELVINS = 2;

    private final SeededFault fault;
    private final Random random;
    private final double recordedLitres;
    private final double trueLitres;
    private final double chargeBar;
    private final double lowestFillBar;
    private final double highestFillBar;
    private final double fillCelsius;
    private final double designHotCelsius;
    private final double nominalLitres;

    SyntheticSystem(SeededFault fault, Random random) {
        this.fault = fault;
        this.random = random;
        this.recordedLitres = Math.exp(between(Math.log(60), Math.log(2000)));
        this.trueLitres = recordedLitres * (1 + error(CONTENTS_ERROR));
        this.chargeBar = between(0.8, 1.5);
        this.lowestFillBar = chargeBar + 0.2;
        this.highestFillBar = chargeBar + 0.4;
        this.fillCelsius = between(10, 20);
        this.designHotCelsius = between(65, 85);
        this.nominalLitres =
                neededLitres() * (fault == SeededFault.UNDERSIZED ? between(1.0 / 3, 2.0 / 3) : between(1.1, 1.6));
    }

    /** The vessel that takes the expansion of the recorded contents from the highest fill without passing 90 % of the relief setting. */
    private double neededLitres() {
        double growth = Water.IAPWS_IF97
                        .specificVolume(Temperature.celsius(designHotCelsius), absolute(HIGHEST_KEPT_BAR))
                        .si()
                / Water.IAPWS_IF97
                        .specificVolume(Temperature.celsius(fillCelsius), absolute(highestFillBar))
                        .si();
        double charge = absolute(chargeBar).si();
        double acceptance = charge / absolute(highestFillBar).si()
                - charge / absolute(HIGHEST_KEPT_BAR).si();
        return recordedLitres * (growth - 1) / acceptance;
    }

    /** What the record says. */
    InstalledSystem record() {
        return new InstalledSystem(
                loop(recordedLitres),
                Volume.litres(CONTENTS_ERROR * recordedLitres),
                Volume.litres(nominalLitres),
                GaugePressure.bar(chargeBar),
                GaugePressure.bar(lowestFillBar),
                GaugePressure.bar(highestFillBar),
                Temperature.celsius(fillCelsius),
                RELIEF,
                Temperature.celsius(fillCelsius - 5),
                Temperature.celsius(designHotCelsius),
                AIR);
    }

    /** Two readings, the cold one at the fill temperature, the hot one warmer by a number of kelvins. */
    Evidence read(double warming) {
        double cold = coldBar();
        double hot = hotBar(cold, fillCelsius + warming);
        return Evidence.of(reading(cold, fillCelsius), reading(hot, fillCelsius + warming));
    }

    /** The charge as it is measured: drained to zero pressure, the membrane lets no gauge show less than the air. */
    MeasuredCharge measureCharge() {
        double gas = absolute(chargeBar).si() * shareInVessel();
        double shown = Math.max(0, (gas - AIR.si()) / GaugePressure.bar(1).si());
        return new MeasuredCharge(
                GaugePressure.bar(shown + error(GAUGE_ERROR_BAR)),
                Temperature.ofSi(room().si() + error(THERMOMETER_ERROR)),
                PressureDifference.bar(GAUGE_ERROR_BAR));
    }

    /** Gas in the vessel as a share of what was charged. */
    private double shareInVessel() {
        return switch (fault) {
            case HALF_LOST -> 0.5;
            case WATERLOGGED -> 0.05;
            case OVER_CHARGED -> 1.3;
            default -> 1;
        };
    }

    private double coldBar() {
        return switch (fault) {
            case OVER_FILLED -> Math.min(2.4, highestFillBar + between(0.3, 0.8));
            case SHORT_OF_WATER -> Math.max(0, chargeBar - between(0.1, 0.6));
            default -> between(lowestFillBar, highestFillBar);
        };
    }

    /** The true hot pressure; a valve that has lifted leaves what its blowdown leaves. */
    private double hotBar(double coldBar, double celsius) {
        double gasRatio = 1 + random.nextGaussian() * GAS_DRIFT_KELVINS / room().si();
        // The vessels hold the water that they held at the cold reading, with the gas as warm as then.
        Reading fill = new Reading(
                AbsolutePressure.ofSi(absolute(coldBar).si() * gasRatio).gauge(AIR), Temperature.celsius(fillCelsius));
        OperatingPoint point = LoopInUse.of(loop(trueLitres), new VesselBank(vessels(coldBar, gasRatio), AIR), fill)
                .curve()
                .at(Temperature.celsius(celsius));
        double opens = between(
                RELIEF.mayOpenFrom().in(Units.BAR),
                RELIEF.setting().plus(RELIEF.tolerance()).in(Units.BAR));
        double leftByValve = between(
                RELIEF.closesAtLeast().in(Units.BAR), RELIEF.fullyOpenAt().in(Units.BAR));
        GaugePressure pressure = point.pressure();
        return pressure == null || pressure.in(Units.BAR) > opens ? leftByValve : pressure.in(Units.BAR);
    }

    private List<InstalledVessel> vessels(double coldBar, double gasRatio) {
        Temperature warm = Temperature.ofSi(room().si() * gasRatio);
        AbsolutePressure charge = AbsolutePressure.ofSi(absolute(chargeBar).si() * shareInVessel());
        InstalledVessel vessel = InstalledVessel.of("vessel", Volume.litres(nominalLitres), charge.gauge(AIR))
                .withGasAt(room(), warm);
        List<InstalledVessel> vessels = new ArrayList<>();
        vessels.add(vessel);
        if (fault == SeededFault.AIR_IN_LOOP) {
            // A pocket of gas acts as a vessel that is empty of water at the cold pressure.
            double pocket = between(0.3, 1)
                    * nominalLitres
                    * absolute(chargeBar).si()
                    / absolute(coldBar).si();
            vessels.add(InstalledVessel.of("air", Volume.litres(pocket), GaugePressure.bar(coldBar))
                    .withGasAt(room(), warm));
        }
        return vessels;
    }

    private GaugeReading reading(double bar, double celsius) {
        return GaugeReading.of(
                GaugePressure.bar(bar + error(GAUGE_ERROR_BAR)),
                PressureDifference.bar(GAUGE_ERROR_BAR),
                Temperature.celsius(celsius + error(THERMOMETER_ERROR)),
                TemperatureDifference.kelvins(THERMOMETER_ERROR));
    }

    private static Loop loop(double litres) {
        return Loop.withContents(Volume.litres(litres)).steel().filledWith(Water.IAPWS_IF97);
    }

    private static Temperature room() {
        return InstalledSystem.CHARGED_AT;
    }

    private static AbsolutePressure absolute(double bar) {
        return GaugePressure.bar(bar).absolute(AIR);
    }

    private double error(double limit) {
        return between(-limit, limit);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
