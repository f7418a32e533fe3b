/**
 * A required volume becomes vessels from the caller's own catalogue, chosen exactly. Start at {@link org.ullage.selection.Catalogue}
 * and {@link org.ullage.selection.SelectionJob}; {@link org.ullage.selection.Catalogue#choose} answers with a {@link
 * org.ullage.selection.Selection} or says in a {@link org.ullage.selection.Shortage} which limit stands in the way and by how much.
 *
 * <p>The vessels of one selection work in parallel with the same gas charge, so their gas-law volumes add up. Everything that is
 * added or compared is a whole number of very small units, so "enough" never depends on rounding.
 *
 * <p>Around it: core's {@code method} before it gives the required volume; {@code operation}, {@code charge} and {@code
 * support} take the chosen vessel on.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.selection;

import org.jspecify.annotations.NullMarked;
