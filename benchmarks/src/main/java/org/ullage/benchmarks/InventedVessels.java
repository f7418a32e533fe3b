package org.ullage.benchmarks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.selection.Catalogue;
import org.ullage.selection.CatalogueItem;
import org.ullage.vessel.VesselKind;

/** Invented catalogues: prices, masses and diameters by litre fall with size and scatter by a fifth. */
final class InventedVessels {

    static final int LARGEST_LITRES = 1000;
    private static final int SMALLEST_LITRES = 8;

    private InventedVessels() {}

    static Catalogue catalogue(int items) {
        Random random = new Random(items);
        List<CatalogueItem> list = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            double litres = SMALLEST_LITRES + random.nextInt(LARGEST_LITRES - SMALLEST_LITRES + 1);
            list.add(CatalogueItem.named("v" + i, VesselKind.BLADDER)
                    .nominal(Volume.litres(litres))
                    .maximum(GaugePressure.bar(6), Temperature.celsius(110))
                    .emptyMass(Mass.kilograms(Math.rint(1000 * scatter(random) * Math.pow(litres, 0.8)) / 1000))
                    .upright(
                            Length.metres(Math.rint(100 * scatter(random) * Math.cbrt(litres)) / 1000),
                            Length.metres(1.5))
                    .price(BigDecimal.valueOf(Math.round(2000 * scatter(random) * Math.pow(litres, 0.7)), 2))
                    .build());
        }
        return Catalogue.of(list);
    }

    private static double scatter(Random random) {
        return 0.8 + 0.4 * random.nextDouble();
    }
}
