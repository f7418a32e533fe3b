package org.ullage.selection;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/** A catalogue made so that nothing can be ruled out: what an item saves in price it takes in footprint. */
class HardCatalogueTest {

    private static final int ITEMS = 300;

    private static CatalogueItem item(int number, Random random) {
        int litres = 8 + random.nextInt(993);
        long cents = Math.round(100 * litres * (0.6 + 0.8 * random.nextDouble()));
        return CatalogueItem.named("V" + number, VesselKind.BLADDER)
                .nominal(Volume.litres(litres))
                .maximum(GaugePressure.bar(6), Temperature.celsius(99))
                .emptyMass(Mass.kilograms(litres / 10.0))
                .standing(Area.squareMetres((2 * litres - cents / 100.0) / 1000), Length.metres(1))
                .price(BigDecimal.valueOf(cents, 2))
                .build();
    }

    @Test
    void aSearchWithoutEndIsRefusedWithWhatToLoosen() {
        Random random = new Random(1);
        List<CatalogueItem> items =
                IntStream.range(0, ITEMS).mapToObj(i -> item(i, random)).toList();
        SelectionJob job = SelectionJob.forVolumes(Volume.litres(3001), null).within(Area.squareMetres(3.001));
        assertTimeoutPreemptively(
                Duration.ofMinutes(2),
                () -> assertThatThrownBy(() -> Catalogue.of(items).choose(job))
                        .isInstanceOf(OutOfRangeException.class)
                        .hasMessageContaining("search for the best vessels")
                        .hasMessageContaining("loosen the limit on footprint or load"));
    }
}
