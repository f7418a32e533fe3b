/**
 * What the closed loop is: its contents, the material of its pipes and the fluid in it. {@link org.ullage.loop.LoopFluid} is
 * the port through which any fluid model enters; this library's own stand in the fluids module.
 *
 * <p>Contents are known in one of four ways, all giving {@link org.ullage.loop.Contents}: {@link
 * org.ullage.loop.MeasuredContents}, {@link org.ullage.loop.TakeOff} over {@link org.ullage.loop.PipeStandard}, {@link
 * org.ullage.loop.QuickEstimate}, and from two readings on a loop in use, which needs the vessel and so lives in the package
 * operation.
 *
 * <p>Start at {@link org.ullage.loop.Loop}. Around it: the vessel at the loop is in {@code vessel}, its pressures are in
 * {@code pressure}; {@code sizing} begins with a loop.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.loop;

import org.jspecify.annotations.NullMarked;
