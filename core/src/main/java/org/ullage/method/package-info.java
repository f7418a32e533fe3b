/**
 * Published sizing rules as values. Start at {@link org.ullage.method.Method}, which is a set of conventions (which expansion, which pipe
 * credit, which reserve, which pressures), each with its source, put through one equation. The ones that ship are in {@link
 * org.ullage.published.Methods}; a house rule is one of them with a convention exchanged:
 *
 * <pre>{@code
 * Method houseRule = Methods.EN_12828.named("house rule").with(WaterReserve.NONE);
 * }</pre>
 *
 * <p>A method applied to a {@link org.ullage.method.SizingJob} gives a {@link org.ullage.method.Sizing}.
 *
 * <p>Around it: {@code loop}, {@code vessel} and {@code pressure} below it; {@code published} fills methods with what is
 * in print, {@code comparison} holds them against each other and {@code sizing} is the way in.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.method;

import org.jspecify.annotations.NullMarked;
