/**
 * The loop in use: its pressure against temperature and what readings of the two tell. Start at {@link
 * org.ullage.operation.LoopInUse}, whose {@link org.ullage.operation.OperatingCurve} gives the pressure at any temperature, or at
 * {@link org.ullage.operation.TwoReadings}, which works out the contents of a loop from readings.
 *
 * <p>Around it: core's {@code vessel} and {@code method} below it; {@code charge} and {@code diagnosis} stand on it,
 * {@code report} draws its curve.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.operation;

import org.jspecify.annotations.NullMarked;
