package org.ullage.selection;

import java.io.Serializable;

/**
 * An item of the catalogue that a job cannot use. Immutable.
 *
 * @param item the item
 * @param reason why, in words; several reasons are parted by semicolons
 */
public record Excluded(CatalogueItem item, String reason) implements Serializable {

    @Override
    public String toString() {
        return item.id() + ": " + reason;
    }
}
