package org.ullage.diagnosis;

/**
 * What a swing starts from and where it goes, on bare SI numbers, pressures absolute.
 *
 * @param fromPascals pressure of the colder reading
 * @param fromKelvins its temperature
 * @param toKelvins temperature of the hotter reading
 * @param fromGasRatio gas temperature at the colder reading over that of the charge
 * @param toGasRatio gas temperature at the hotter reading over that of the charge
 * @param contentsFactor true contents over recorded ones
 */
record Swing(
        double fromPascals,
        double fromKelvins,
        double toKelvins,
        double fromGasRatio,
        double toGasRatio,
        double contentsFactor) {

    /** The same with one of its values moved. */
    Swing shifted(SwingInput input, double by) {
        return new Swing(
                fromPascals + (input == SwingInput.COLD_PRESSURE ? by : 0),
                fromKelvins + (input == SwingInput.COLD_TEMPERATURE ? by : 0),
                toKelvins + (input == SwingInput.HOT_TEMPERATURE ? by : 0),
                fromGasRatio,
                toGasRatio + (input == SwingInput.HOT_GAS_RATIO ? by : 0),
                contentsFactor + (input == SwingInput.CONTENTS ? by : 0));
    }
}
