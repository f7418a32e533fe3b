package org.ullage.selection;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/** Invented vessels for the tests of this package. */
final class Vessels {

    private Vessels() {}

    static CatalogueItemBuilder bladder(String id, double litres, double price) {
        return CatalogueItem.named(id, VesselKind.BLADDER)
                .nominal(Volume.litres(litres))
                .maximum(GaugePressure.bar(6), Temperature.celsius(100))
                .emptyMass(Mass.kilograms(litres / 5))
                .standing(Area.squareMetres(litres / 1000), Length.metres(1))
                .connection("G 1")
                .price(BigDecimal.valueOf(price));
    }

    static CatalogueItem plain(String id, double litres, double price) {
        return bladder(id, litres, price).stock(99).build();
    }

    static Catalogue catalogue(CatalogueItem... items) {
        return Catalogue.of(List.of(items));
    }

    static SelectionJob litres(double nominal) {
        return SelectionJob.forVolumes(Volume.litres(nominal), null);
    }

    /** Few different numbers, so that equal prices, equal sizes and ties abound; some stock, some acceptance limits. */
    static Catalogue random(Random random, int items, int variety) {
        List<CatalogueItem> list = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            double litres = 10 * (1 + random.nextInt(variety));
            CatalogueItemBuilder item = CatalogueItem.named("v" + i, VesselKind.DIAPHRAGM)
                    .nominal(Volume.litres(litres))
                    .acceptanceLimit(Volume.litres(litres * (1 + random.nextInt(5)) / 5))
                    .maximum(GaugePressure.bar(6), Temperature.celsius(100))
                    .emptyMass(Mass.kilograms(1 + random.nextInt(variety)))
                    .standing(Area.squareMetres((1 + random.nextInt(variety)) / 10.0), Length.metres(1))
                    .price(BigDecimal.valueOf(random.nextInt(3 * variety)));
            if (random.nextInt(3) == 0) {
                item.stock(random.nextInt(4));
            }
            list.add(item.build());
        }
        return Catalogue.of(list);
    }
}
