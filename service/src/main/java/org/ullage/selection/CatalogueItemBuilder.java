package org.ullage.selection;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/** Collects the fields of a {@link CatalogueItem} by name. Not for many threads. */
public final class CatalogueItemBuilder {

    private final String id;
    private final VesselKind kind;
    private @Nullable Volume nominal;
    private @Nullable Volume acceptanceLimit;
    private @Nullable GaugePressure rating;
    private @Nullable Temperature highestTemperature;
    private @Nullable Mass emptyMass;
    private @Nullable Area footprint;
    private @Nullable Length height;
    private String connection = "";
    private @Nullable BigDecimal price;
    private @Nullable Integer stock;

    CatalogueItemBuilder(String id, VesselKind kind) {
        this.id = id;
        this.kind = kind;
    }

    /**
     * Required: the nominal volume.
     *
     * @param volume above zero
     * @return this builder
     */
    public CatalogueItemBuilder nominal(Volume volume) {
        nominal = volume;
        return this;
    }

    /**
     * May be left out: the most water the vessel takes in.
     *
     * @param volume above zero and up to the nominal volume
     * @return this builder
     */
    public CatalogueItemBuilder acceptanceLimit(Volume volume) {
        acceptanceLimit = volume;
        return this;
    }

    /**
     * Required: what the vessel may be used at.
     *
     * @param pressure highest gauge pressure
     * @param temperature highest temperature
     * @return this builder
     */
    public CatalogueItemBuilder maximum(GaugePressure pressure, Temperature temperature) {
        rating = pressure;
        highestTemperature = temperature;
        return this;
    }

    /**
     * Required: the mass without water.
     *
     * @param mass zero or more
     * @return this builder
     */
    public CatalogueItemBuilder emptyMass(Mass mass) {
        emptyMass = mass;
        return this;
    }

    /**
     * Required, this or {@link #standing}: the size of an upright round vessel. Its footprint is the square around it, because round
     * vessels side by side take no less of a floor.
     *
     * @param diameter above zero
     * @param tall height as it stands
     * @return this builder
     * @throws OutOfRangeException if the diameter is not above zero
     */
    public CatalogueItemBuilder upright(Length diameter, Length tall) {
        new ItemChecks(id).aboveZero("diameter", diameter.si(), diameter.textInBothSystems());
        return standing(Area.ofSi(diameter.si() * diameter.si()), tall);
    }

    /**
     * Required, this or {@link #upright}: the floor area and the height, for a vessel on feet, lying or square.
     *
     * @param floor the floor area it takes
     * @param tall height as it stands
     * @return this builder
     */
    public CatalogueItemBuilder standing(Area floor, Length tall) {
        footprint = floor;
        height = tall;
        return this;
    }

    /**
     * May be left out: the connection.
     *
     * @param text size and thread in words
     * @return this builder
     */
    public CatalogueItemBuilder connection(String text) {
        connection = text;
        return this;
    }

    /**
     * Required: the price.
     *
     * @param amount zero or more, at most four decimals, in the caller's currency
     * @return this builder
     */
    public CatalogueItemBuilder price(BigDecimal amount) {
        price = amount;
        return this;
    }

    /**
     * May be left out: how many there are.
     *
     * @param pieces zero or more
     * @return this builder
     */
    public CatalogueItemBuilder stock(int pieces) {
        stock = pieces;
        return this;
    }

    /**
     * Makes the item.
     *
     * @return the item
     * @throws MissingInputException if a required field was not given; the message names item and field
     * @throws OutOfRangeException if a field is out of range; the message names item and field
     */
    public CatalogueItem build() {
        return new CatalogueItem(
                id,
                kind,
                required("nominal volume", nominal),
                acceptanceLimit,
                required("maximum pressure", rating),
                required("maximum temperature", highestTemperature),
                required("empty mass", emptyMass),
                required("footprint", footprint),
                required("height", height),
                connection,
                required("price", price),
                stock);
    }

    private <T> T required(String field, @Nullable T value) {
        if (value == null) {
            throw new MissingInputException(field, "catalogue item " + id, "take it from the vessel's data sheet");
        }
        return value;
    }
}
