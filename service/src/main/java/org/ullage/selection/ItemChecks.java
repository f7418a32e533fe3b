package org.ullage.selection;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/** The checks of one catalogue item; every refusal names the item and the field. */
final class ItemChecks {

    private final String id;

    ItemChecks(String id) {
        if (id.isBlank()) {
            throw new OutOfRangeException(
                    "catalogue item id", "\"\"", "not blank", "give every item a name of its own");
        }
        this.id = id;
    }

    void volumes(Volume nominal, @Nullable Volume acceptanceLimit) {
        aboveZero("nominal volume", nominal.si(), nominal.textInBothSystems());
        Exact.volume(nominal.si());
        if (acceptanceLimit == null) {
            return;
        }
        aboveZero("acceptance limit", acceptanceLimit.si(), acceptanceLimit.textInBothSystems());
        if (acceptanceLimit.si() > nominal.si()) {
            throw refused(
                    "acceptance limit",
                    acceptanceLimit.textInBothSystems(),
                    "at most the nominal volume " + nominal.textInBothSystems());
        }
    }

    void aboveZero(String field, double value, String text) {
        if (value <= 0) {
            throw refused(field, text, "above zero");
        }
    }

    void stock(@Nullable Integer stock) {
        if (stock != null && stock < 0) {
            throw refused("stock", stock.toString(), "zero or more, or left out if not known");
        }
    }

    /** The price without trailing zeros, so that 10 and 10.00 make equal items. */
    BigDecimal price(BigDecimal price) {
        BigDecimal plain = price.stripTrailingZeros();
        if (plain.signum() < 0 || plain.scale() > Exact.PRICE_DECIMALS) {
            throw refused("price", price.toString(), "zero or more with at most " + Exact.PRICE_DECIMALS + " decimals");
        }
        Exact.price(plain);
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    private OutOfRangeException refused(String field, String value, String allowed) {
        return new OutOfRangeException(
                field + " of catalogue item " + id, value, allowed, "check the vessel's data sheet and the unit");
    }
}
