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

    /** The same with one of its values moved: cold pressure, either temperature, gas temperature when hot, contents. */
    Swing shifted(int which, double by) {
        return new Swing(
                fromPascals + (which == 0 ? by : 0),
                fromKelvins + (which == 1 ? by : 0),
                toKelvins + (which == 2 ? by : 0),
                fromGasRatio,
                toGasRatio + (which == 3 ? by : 0),
                contentsFactor + (which == 4 ? by : 0));
    }
}
