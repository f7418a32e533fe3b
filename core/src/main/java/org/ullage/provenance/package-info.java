/**
 * Where a number comes from.
 *
 * <p>Every number in Ullage that is not plain arithmetic stands beside a {@link org.ullage.provenance.Source}: a published
 * document, a computation with a named reference library, memory, or common practice without a document. Start at {@link
 * org.ullage.provenance.Source}; a single cited number is a {@link org.ullage.provenance.Constant}.
 *
 * <p>Around it: the ground floor, used by every other package; {@link org.ullage.provenance.CitedTable} reads the tables
 * that stand in resource files.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.provenance;

import org.jspecify.annotations.NullMarked;
