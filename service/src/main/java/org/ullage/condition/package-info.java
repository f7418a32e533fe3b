/**
 * What a sample of the loop's fluid says: {@link org.ullage.condition.FluidSample} in, {@link org.ullage.condition.FluidFindings} out.
 * Published limits contradict each other; {@link org.ullage.condition.PublishedLimits} holds them all, and a finding shows which one
 * decides and what the others say.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.condition;

import org.jspecify.annotations.NullMarked;
