/**
 * The loop in use: what readings of pressure and temperature tell. Start at {@link org.ullage.operation.TwoReadings}, which works
 * out the contents of a loop from them.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.operation;

import org.jspecify.annotations.NullMarked;
