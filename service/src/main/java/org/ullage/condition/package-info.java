/**
 * What a sample of the loop's fluid says: {@link org.ullage.condition.FluidSample} in, {@link org.ullage.condition.FluidFindings} out.
 * Published limits contradict each other; {@link org.ullage.condition.PublishedLimits} holds them all, and a finding shows which one
 * decides and what the others say.
 *
 * <p>Start at {@link org.ullage.condition.FluidFindings}. Around it: {@code quantity} and {@code workings} below it;
 * {@code record} keeps samples and follows them over the years.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.condition;

import org.jspecify.annotations.NullMarked;
