/**
 * The front door: {@link org.ullage.sizing.VesselSizing} asks for what a sizing needs, step by step, so that nothing needed can
 * be left out.
 *
 * <pre>{@code
 * Sizing sizing = VesselSizing.forLoop(Loop.withContents(litres(1200)).steel().filledWith(Water.IAPWS_IF97))
 *         .between(celsius(10), celsius(82))
 *         .vessel(VesselType.bladder())
 *         .staticHead(metres(9))
 *         .reliefValve(GaugePressure.bar(3))
 *         .by(Methods.ASHRAE)
 *         .size();
 * }</pre>
 *
 * <p>Many at once: {@link org.ullage.sizing.SizingBatch} takes columns of numbers; {@link org.ullage.sizing.SizingSweep} shows how the
 * answer hangs on two inputs.
 *
 * <p>Start at {@link org.ullage.sizing.VesselSizing#forLoop}. Around it: everything of core is below it, from {@code loop} to {@code
 * method}; a method comes from {@code published}, a fluid from the fluids module, and the vessel to buy from service's {@code
 * selection}.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.sizing;

import org.jspecify.annotations.NullMarked;
