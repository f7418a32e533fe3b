/**
 * The published sizing rules, each a {@link org.ullage.method.Method} in a file of its own with its conventions and their sources.
 * Start at {@link org.ullage.published.Methods}. Beside them the tables of the US codes ({@link
 * org.ullage.published.CodeTankTable}, {@link org.ullage.published.GravityTankTable}) and the small rules around a vessel ({@link
 * org.ullage.published.ExpansionPipe}, {@link org.ullage.published.PreCoolingVessel}).
 *
 * <p>Around it: {@code method} below it is their engine; {@code comparison} says why they differ.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.published;

import org.jspecify.annotations.NullMarked;
