/**
 * The gas side of a vessel on the day: what charge to set, what the gauge should read, and whether the gauge can tell. Start at {@link
 * org.ullage.charge.ChargeJob}, which turns a sizing into a {@link org.ullage.charge.ChargePlan}; {@link
 * org.ullage.charge.GaugeChoice} judges the gauge and {@link org.ullage.charge.ChargeCheckSteps} lists the steps of the work.
 *
 * <p>Around it: {@code operation} below it knows the loop in use; {@code record} keeps what was set, {@code diagnosis}
 * says what a reading means.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.charge;

import org.jspecify.annotations.NullMarked;
