/**
 * How an answer shows the way it was reached: a list of {@link org.ullage.workings.Step}, each with symbol, formula, the values
 * put in, the result and its {@link org.ullage.provenance.Source}; and the {@link org.ullage.workings.Caution} that belongs to
 * it. Start at {@link org.ullage.workings.Workings}, which prints them.
 *
 * <p>Around it: {@code provenance} and {@code quantity} below it; every answer of the packages above carries its workings
 * and its warnings.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.workings;

import org.jspecify.annotations.NullMarked;
