/**
 * The commands that compare: {@code methods} puts one loop to every method, {@code explain} walks from one method to another, {@code
 * fluids} holds the models of a fluid against each other.
 */
@NullMarked
package org.ullage.examples.compare;

import org.jspecify.annotations.NullMarked;
