/**
 * Why methods and fluids differ. {@link org.ullage.comparison.MethodComparison} puts one job to many methods and grades the answers by
 * the mass balance; {@link org.ullage.comparison.Explanation} walks from one method to another convention by convention, in litres;
 * {@link org.ullage.comparison.ConventionShares} averages that over all orders; {@link org.ullage.comparison.VesselByFluid} shows what
 * the choice of a fluid model costs.
 *
 * <p>Start at {@link org.ullage.comparison.MethodComparison}. Around it: {@code published} below it; service's {@code
 * report} prints and draws what is found here.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.comparison;

import org.jspecify.annotations.NullMarked;
