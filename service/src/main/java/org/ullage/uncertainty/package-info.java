/**
 * How sure an answer is. Inputs are given as a value with a {@link org.ullage.uncertainty.Spread}; {@link
 * org.ullage.uncertainty.LinearPropagation} answers by the law of propagation of uncertainty, {@link
 * org.ullage.uncertainty.MonteCarlo} by drawing. Both work on any {@link org.ullage.uncertainty.ModelFunction}. For the sizing of a
 * vessel start at {@link org.ullage.uncertainty.SizingUncertainty}:
 *
 * <pre>{@code
 * SizingUncertainty question = SizingUncertainty.of(Methods.EN_12828, job)
 *         .contents(Uncertain.triangular(takeOff.range()))
 *         .coldPressure(Uncertain.normal(GaugePressure.bar(1.2), PressureDifference.bar(0.05)))
 *         .reliefSetting(Uncertain.opening(ReliefValve.iso4126(GaugePressure.bar(3))));
 * SampledSizing answer = question.sampled(100_000, 42);
 * Volume safe = answer.volumeFor(0.95);
 * }</pre>
 *
 * <p>Around it: core's {@code method} below it is the model that is asked; {@code report} draws its answers. It knows
 * nothing of vessels in use.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.uncertainty;

import org.jspecify.annotations.NullMarked;
