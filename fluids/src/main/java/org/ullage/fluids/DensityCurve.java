package org.ullage.fluids;

import java.io.Serializable;

/** The specific volume of a liquid of fixed composition, without range checks. SI units; allocates nothing. */
@FunctionalInterface
interface DensityCurve extends Serializable {

    /** Cubic metres per kilogram at a temperature in kelvins and an absolute pressure in pascals. */
    double specificVolume(double kelvins, double pascals);
}
