package org.ullage.operation;

import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/** Turns the numbers of a curve into points with a state, and into a refusal where there is no pressure. */
final class OperatingPoints {

    private OperatingPoints() {}

    static OperatingPoint of(OperatingCurve curve, Temperature temperature) {
        double pascals = curve.numbers().pressure(temperature.si());
        LoopState state = state(curve, temperature.si(), pascals);
        BankNumbers bank = curve.numbers().bank();
        double water = switch (state) {
            case CUSHIONED -> bank.water(pascals);
            case LIQUID_FULL -> Math.min(bank.capacity(), bank.water(pascals));
            case VESSELS_EMPTY, BOILING -> bank.water(bank.floor());
        };
        return new OperatingPoint(
                temperature,
                OperatingNumbers.isPressure(pascals) ? curve.gauge(pascals) : null,
                state,
                Volume.ofSi(water),
                Volume.ofSi(bank.capacity() - water));
    }

    private static LoopState state(OperatingCurve curve, double kelvins, double pascals) {
        if (pascals == OperatingNumbers.TOO_LOW) {
            boolean gasEndsFirst =
                    curve.numbers().bank().floor() >= curve.numbers().loop().boilingPressure(kelvins);
            return gasEndsFirst ? LoopState.VESSELS_EMPTY : LoopState.BOILING;
        }
        return pascals == OperatingNumbers.TOO_HIGH || curve.numbers().isLiquidFull(kelvins)
                ? LoopState.LIQUID_FULL
                : LoopState.CUSHIONED;
    }

    static OutOfRangeException refusal(OperatingCurve curve, double kelvins) {
        OperatingPoint point = of(curve, Temperature.ofSi(kelvins));
        return new OutOfRangeException(
                "loop temperature",
                point.temperature().textInBothSystems(),
                "where the gas, or the known compression of the liquid, sets the pressure",
                "at this one " + point.state());
    }
}
