/**
 * The vessel and the one equation behind all closed vessels: the isothermal gas law, {@link org.ullage.vessel.GasLaw}. {@link
 * org.ullage.vessel.VesselType} says how much of its shell a vessel can fill with water.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.vessel;

import org.jspecify.annotations.NullMarked;
