package org.ullage.report;

import java.util.List;

/**
 * A list without numbers. Immutable.
 *
 * @param items a line of text each
 */
public record BulletList(List<String> items) implements Block {

    /**
     * Copies the items.
     *
     * @param items a line of text each
     */
    public BulletList {
        items = List.copyOf(items);
    }

    @Override
    public void writeTo(Medium medium) {
        medium.list(this);
    }
}
