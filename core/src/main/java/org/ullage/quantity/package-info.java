/**
 * Physical quantities as types, so that what must not be mixed cannot be: gauge and absolute pressure and a pressure
 * difference; temperature and temperature difference; mass and volume fraction; density and specific volume.
 *
 * <p>Each type is an immutable value held as one {@code double} in the coherent SI unit. Make one with a named factory ({@link
 * org.ullage.quantity.Volume#litres(double)}), from any unit ({@link org.ullage.quantity.Volume#of(double,
 * org.ullage.quantity.Unit)}) or from text ({@link org.ullage.quantity.Volume#parse(String)}); read it with {@link
 * org.ullage.quantity.Quantity#in(org.ullage.quantity.Unit)}. All units with their exact factors and sources stand in {@link
 * org.ullage.quantity.Units}.
 *
 * <p>Two ways to print: {@link org.ullage.quantity.Quantity#text(org.ullage.quantity.Unit)} for people, with sensible digits,
 * and {@link org.ullage.quantity.Quantity#toString()}, which parses back to exactly the same value.
 *
 * <p>In JSON a quantity is that exact text, such as {@code "1.5 bar"}: the types carry annotations of Jackson, which are read when Jackson is
 * there and passed over when it is not. The constructors on SI values are marked as not for Jackson, which would hand them a number that
 * has no unit.
 *
 * <p>Bad input is refused by {@link org.ullage.quantity.OutOfRangeException} (a value) or {@link
 * org.ullage.quantity.UnreadableQuantityException} (a text), both {@link java.lang.IllegalArgumentException}.
 *
 * <p>Start at {@link org.ullage.quantity.Quantity}. Around it: {@code provenance} below it gives the sources of the
 * factors; everything above speaks in these types.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.quantity;

import org.jspecify.annotations.NullMarked;
