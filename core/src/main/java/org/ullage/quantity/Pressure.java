package org.ullage.quantity;

/**
 * The dimension that gauge pressure, absolute pressure and pressure difference share: they are read in the same units but are
 * three types, because taking one for another moves an answer by an atmosphere.
 */
public sealed interface Pressure permits GaugePressure, AbsolutePressure, PressureDifference {}
