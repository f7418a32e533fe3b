/**
 * The vessel and the one equation behind all closed vessels: the isothermal gas law, {@link org.ullage.vessel.GasLaw}. {@link
 * org.ullage.vessel.VesselType} says how much of its shell a vessel can fill with water.
 *
 * <p>Start at {@link org.ullage.vessel.GasLaw}. Around it: {@code pressure} says between which pressures the gas works,
 * {@code method} how much water comes; service's {@code operation} and {@code charge} use the same equation.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.vessel;

import org.jspecify.annotations.NullMarked;
