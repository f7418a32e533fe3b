package org.ullage.fluids;

/**
 * A row of a user's density table.
 *
 * @param percent concentration in percent; 0 in a table without one
 * @param celsius temperature in degC
 * @param density in kg/m3
 * @param resolution one unit of the last digit given, kg/m3; 0 if it is exact
 */
record DensityRow(double percent, double celsius, double density, double resolution) {

    String temperature() {
        return Celsius.text(celsius + Celsius.ZERO);
    }
}
