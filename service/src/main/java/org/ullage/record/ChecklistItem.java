package org.ullage.record;

import java.io.Serializable;
import org.ullage.provenance.Source;

/**
 * One thing to do or to look at. Immutable.
 *
 * @param text what to do
 * @param why why, or what a finding would mean
 * @param source where that is said
 */
public record ChecklistItem(String text, String why, Source source) implements Serializable {}
