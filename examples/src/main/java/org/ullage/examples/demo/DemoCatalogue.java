package org.ullage.examples.demo;

import java.math.BigDecimal;
import java.util.List;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.selection.Catalogue;
import org.ullage.selection.CatalogueItem;
import org.ullage.vessel.VesselKind;

/** What the invented wholesaler has on the shelf. */
final class DemoCatalogue {

    static final Catalogue VESSELS = Catalogue.of(List.of(
            vessel(25, 4.8, 300, 420, "48.00", 25),
            vessel(35, 7.1, 360, 465, "67.00", 12),
            vessel(50, 9.6, 410, 520, "93.00", 8),
            vessel(80, 14.5, 480, 610, "139.00", 3),
            vessel(110, 19.8, 480, 780, "188.00", 2)));

    private DemoCatalogue() {}

    /** Diaphragm vessels that accept half of their shell. */
    private static CatalogueItem vessel(
            double litres, double kilograms, double diameter, double height, String price, int stock) {
        return CatalogueItem.named("V" + Math.round(litres), VesselKind.DIAPHRAGM)
                .nominal(Volume.litres(litres))
                .acceptanceLimit(Volume.litres(litres / 2))
                .maximum(GaugePressure.bar(6), Temperature.celsius(70))
                .emptyMass(Mass.kilograms(kilograms))
                .upright(Length.millimetres(diameter), Length.millimetres(height))
                .connection("R 3/4")
                .price(new BigDecimal(price))
                .stock(stock)
                .build();
    }
}
