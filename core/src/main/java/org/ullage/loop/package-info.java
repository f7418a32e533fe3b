/**
 * What the closed loop is: its contents, the material of its pipes and the fluid in it. {@link org.ullage.loop.LoopFluid} is
 * the port through which any fluid model enters; this library's own stand in the fluids module.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.loop;

import org.jspecify.annotations.NullMarked;
