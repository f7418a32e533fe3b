/**
 * The charge program: a loop of a file and the vessel that was bought in, the charge to set and the fill of the day out. The way: {@link
 * org.ullage.examples.charge.ChargeCommand}, {@link org.ullage.examples.charge.ChargeSheet}.
 */
@NullMarked
package org.ullage.examples.charge;

import org.jspecify.annotations.NullMarked;
