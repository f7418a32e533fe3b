/**
 * The pressures at the vessel, as conventions that are values: how the cold pressure follows from the static head ({@link
 * org.ullage.pressure.ColdPressureRule}), how the final pressure follows from the relief setting ({@link
 * org.ullage.pressure.FinalPressureRule}), what the gas is charged to ({@link org.ullage.pressure.ChargeRule}) and which air
 * pressure counts ({@link org.ullage.pressure.AtmosphereRule}). Each carries its source.
 *
 * <p>Start at {@link org.ullage.pressure.StaticHead}. Around it: {@code loop} and {@code vessel} below it; {@code method}
 * puts these rules beside those for the expansion.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.pressure;

import org.jspecify.annotations.NullMarked;
