/**
 * What holds a vessel up and what takes it off: its weight when it is empty, in use and waterlogged; the pipe stub, wall bracket or
 * rack of channel and rods that carries it; the side force of an earthquake; and how much of it a person may lift. Start at {@link
 * org.ullage.support.VesselWeight}.
 *
 * <p>A check that fails is an answer, a {@link org.ullage.support.LimitCheck} that says so; only bad input is an exception. All of it
 * is a first look: a licensed engineer and the local code decide.
 *
 * <p>Around it: only {@code loop} and what is under it below; the vessel comes from {@code selection} or from a tag on the
 * wall.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.support;

import org.jspecify.annotations.NullMarked;
