package org.ullage.condition;

import java.io.Serializable;
import org.ullage.provenance.Source;

/**
 * What the senses find, without an instrument. Immutable.
 *
 * @param word what was seen or smelt
 * @param verdict what it calls for
 * @param meaning what it means, for people
 * @param source where that is said
 */
public record Observation(String word, Verdict verdict, String meaning, Source source) implements Serializable {}
