/**
 * The fluids of a closed loop, each behind {@link org.ullage.loop.LoopFluid}.
 *
 * <p>Water: start at {@link org.ullage.fluids.Water}, which holds three models; {@link org.ullage.fluids.Iapws97} gives the
 * underlying equations on bare numbers. Coefficients and tables stand in resource files of this package, each with its source in
 * its header.
 */
@NullMarked
package org.ullage.fluids;

import org.jspecify.annotations.NullMarked;
