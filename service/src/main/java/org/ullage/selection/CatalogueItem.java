package org.ullage.selection;

import java.io.Serializable;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * A vessel that can be bought, as the caller's own catalogue describes it. Immutable. Built by {@link #named}.
 *
 * @param id name in the catalogue, not blank
 * @param kind kind of vessel
 * @param nominal nominal volume, above zero
 * @param acceptanceLimit the most water it takes in, above zero and up to the nominal volume, or null if not known: it then counts with
 *     its nominal volume, and for a diaphragm vessel the answer warns
 * @param rating highest gauge pressure it may be used at, above zero
 * @param highestTemperature highest temperature it may be used at
 * @param emptyMass mass without water
 * @param footprint floor area it takes
 * @param height height as it stands
 * @param connection size and thread of the connection, in words
 * @param price zero or more, at most four decimals, in the caller's currency
 * @param stock how many there are, zero or more, or null if not known: it then counts as unlimited, and the answer warns
 */
public record CatalogueItem(
        String id,
        VesselKind kind,
        Volume nominal,
        @Nullable Volume acceptanceLimit,
        GaugePressure rating,
        Temperature highestTemperature,
        Mass emptyMass,
        Area footprint,
        Length height,
        String connection,
        BigDecimal price,
        @Nullable Integer stock)
        implements Serializable {

    /**
     * Checks the item.
     *
     * @param id name in the catalogue
     * @param kind kind of vessel
     * @param nominal nominal volume
     * @param acceptanceLimit the most water it takes in, or null
     * @param rating highest gauge pressure
     * @param highestTemperature highest temperature
     * @param emptyMass mass without water
     * @param footprint floor area
     * @param height height as it stands
     * @param connection size and thread
     * @param price in the caller's currency
     * @param stock how many there are, or null
     * @throws OutOfRangeException if a field is out of range; the message names item and field
     */
    public CatalogueItem {
        ItemChecks checks = new ItemChecks(id);
        checks.volumes(nominal, acceptanceLimit);
        checks.aboveZero("maximum pressure", rating.si(), rating.textInBothSystems());
        checks.aboveZero("height", height.si(), height.textInBothSystems());
        checks.stock(stock);
        price = checks.price(price);
        Exact.area(footprint.si());
        Exact.mass(emptyMass.si());
    }

    /**
     * Begins an item.
     *
     * @param id name in the catalogue
     * @param kind kind of vessel
     * @return the builder
     */
    public static CatalogueItemBuilder named(String id, VesselKind kind) {
        return new CatalogueItemBuilder(id, kind);
    }

    /**
     * The most water it can take in as far as is known.
     *
     * @return the acceptance limit, or the nominal volume if the limit is not known
     */
    public Volume acceptance() {
        return acceptanceLimit == null ? nominal : acceptanceLimit;
    }

    /**
     * Whether its acceptance limit should have been stated: that of a diaphragm vessel is less than its nominal volume.
     *
     * @return whether it is a diaphragm vessel without acceptance limit
     */
    public boolean lacksAcceptanceLimit() {
        return kind == VesselKind.DIAPHRAGM && acceptanceLimit == null;
    }

    /**
     * Mass with its whole nominal volume full of the loop's fluid: what its support must carry.
     *
     * @param fluid density of the fluid, cold
     * @return empty mass and fluid
     */
    public Mass waterloggedMass(Density fluid) {
        return emptyMass.plus(Mass.ofSi(nominal.si() * fluid.si()));
    }
}
