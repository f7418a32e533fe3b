/**
 * The fluids of a closed loop, each behind {@link org.ullage.loop.LoopFluid}.
 *
 * <p>Water: start at {@link org.ullage.fluids.Water}, which holds three models; {@link org.ullage.fluids.Iapws97} gives the
 * underlying equations on bare numbers. Coefficients and tables stand in resource files of this package, each with its source in
 * its header.
 *
 * <p>Glycol mixtures: start at {@link org.ullage.fluids.PropyleneGlycol} or {@link org.ullage.fluids.EthyleneGlycol}. Four models
 * stand side by side ({@link org.ullage.fluids.GlycolModel}) and disagree; which one is taken where none is named, and why, is
 * argued at {@link org.ullage.fluids.Glycol#defaultModel}, and {@link org.ullage.fluids.FluidComparison} shows what the choice is
 * worth. Volume and mass percent are different types, linked by a stated {@link org.ullage.fluids.ConcentrationDefinition}.
 *
 * <p>Anything else: {@link org.ullage.fluids.UserFluidTable} reads and checks a density table, {@link
 * org.ullage.fluids.UserFluid} takes a function. {@link org.ullage.fluids.Fluids#parse} reads a fluid by name. For any fluid
 * {@link org.ullage.fluids.Expansion} works out the expansion between two temperatures and {@link org.ullage.fluids.FluidSeries}
 * a table or the points of a chart.
 *
 * <p>Around it: core's {@code loop} below it holds the port, and nothing of core above it knows a fluid; {@code
 * comparison.VesselByFluid} takes any list of them.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.fluids;

import org.jspecify.annotations.NullMarked;
