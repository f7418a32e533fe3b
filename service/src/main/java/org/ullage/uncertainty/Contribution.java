package org.ullage.uncertainty;

import java.io.Serializable;

/**
 * What one input is worth in a combined standard uncertainty. Immutable.
 *
 * @param name the input in words
 * @param sensitivity how the result follows the input: c_i, in the coherent SI unit of the result per that of the input; zero for an
 *     input without spread, for which it is not worked out
 * @param uncertainty c_i u(x_i) with its sign, in the coherent SI unit of the result
 * @param share part of the variance; all add up to 1, or to 0 if nothing is uncertain. With correlation one may be negative
 */
public record Contribution(String name, double sensitivity, double uncertainty, double share) implements Serializable {}
