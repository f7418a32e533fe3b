package org.ullage.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

class CatalogueItemTest {

    @Test
    void uprightVesselTakesTheSquareAroundIt() {
        CatalogueItem item = Vessels.bladder("B50", 50, 10)
                .upright(Length.metres(0.4), Length.metres(0.75))
                .build();
        assertThat(item.footprint().si()).isCloseTo(0.16, within(1e-12));
        assertThat(item.height()).isEqualTo(Length.metres(0.75));
    }

    @Test
    void waterloggedMassIsShellAndWholeNominalVolume() {
        CatalogueItem item = Vessels.bladder("B50", 50, 10)
                .acceptanceLimit(Volume.litres(20))
                .emptyMass(Mass.kilograms(9))
                .build();
        assertThat(item.waterloggedMass(Density.kilogramsPerCubicMetre(1040)).si())
                .isCloseTo(9 + 52, within(1e-9));
    }

    @Test
    void acceptanceLimitThatIsNotKnownCountsWithTheNominalVolumeAndIsSeen() {
        CatalogueItem bladder = Vessels.bladder("B50", 50, 10).build();
        assertThat(bladder.acceptance()).isEqualTo(Volume.litres(50));
        assertThat(bladder.lacksAcceptanceLimit()).isFalse();
        CatalogueItem diaphragm = CatalogueItem.named("D50", VesselKind.DIAPHRAGM)
                .nominal(Volume.litres(50))
                .maximum(GaugePressure.bar(3), Temperature.celsius(90))
                .emptyMass(Mass.kilograms(9))
                .standing(Area.squareMetres(0.2), Length.metres(0.5))
                .price(BigDecimal.TEN)
                .build();
        assertThat(diaphragm.lacksAcceptanceLimit()).isTrue();
    }

    @Test
    void trailingZerosOfThePriceDoNotMatter() {
        assertThat(Vessels.bladder("a", 8, 10).price(new BigDecimal("10.00")).build())
                .isEqualTo(Vessels.bladder("a", 8, 10).price(BigDecimal.TEN).build());
    }

    static Stream<Arguments> badFields() {
        return Stream.of(
                bad(item -> item.nominal(Volume.litres(0)), "nominal volume of catalogue item X"),
                bad(item -> item.nominal(Volume.litres(-5)), "nominal volume of catalogue item X"),
                bad(item -> item.nominal(Volume.cubicMetres(600)), "volume 600"),
                bad(item -> item.acceptanceLimit(Volume.litres(51)), "acceptance limit of catalogue item X 51 L"),
                bad(item -> item.acceptanceLimit(Volume.litres(0)), "acceptance limit of catalogue item X 0 L"),
                bad(
                        item -> item.maximum(GaugePressure.bar(0), Temperature.celsius(90)),
                        "maximum pressure of catalogue item X"),
                bad(item -> item.standing(Area.squareMetres(1), Length.metres(0)), "height of catalogue item X"),
                bad(item -> item.price(BigDecimal.valueOf(-1)), "price of catalogue item X -1"),
                bad(item -> item.price(new BigDecimal("1.00005")), "price of catalogue item X 1.00005"),
                bad(item -> item.stock(-1), "stock of catalogue item X -1"));
    }

    private static Arguments bad(UnaryOperator<CatalogueItemBuilder> change, String message) {
        return Arguments.of(change, message);
    }

    @ParameterizedTest
    @MethodSource("badFields")
    void refusalNamesItemAndField(UnaryOperator<CatalogueItemBuilder> change, String message) {
        CatalogueItemBuilder item = change.apply(Vessels.bladder("X", 50, 10));
        assertThatThrownBy(item::build).isInstanceOf(OutOfRangeException.class).hasMessageStartingWith(message);
    }

    @Test
    void missingFieldIsNamed() {
        assertThatThrownBy(() -> CatalogueItem.named("X", VesselKind.BLADDER)
                        .nominal(Volume.litres(8))
                        .build())
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("maximum pressure is missing: catalogue item X");
        assertThatThrownBy(() -> Vessels.bladder(" ", 8, 1).build())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("catalogue item id");
        assertThatThrownBy(() -> Vessels.bladder("X", 8, 1).upright(Length.metres(0), Length.metres(1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("diameter of catalogue item X");
    }
}
