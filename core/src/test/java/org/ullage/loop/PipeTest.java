package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/** A pipe of the caller's: contents are geometry. */
class PipeTest {

    private static final Pipe HUNDRED = Pipe.ofBore("duct", Length.millimetres(100), PipeMaterial.STEEL);

    @Test
    void contentsOfALength() {
        // pi / 4 x (0.1 m)^2 x 10 m = 78.5398 L
        assertThat(HUNDRED.contents(Length.metres(10)).in(Units.LITRE)).isCloseTo(78.539816, within(1e-6));
        assertThat(HUNDRED.litresPerMetre()).isCloseTo(7.8539816, within(1e-7));
        // 7.8539816 L/m x 0.3048 m/ft / 3.785411784 L/gal
        assertThat(HUNDRED.gallonsPerFoot()).isCloseTo(0.6323998, within(1e-6));
        assertThat(HUNDRED.contents(Length.metres(0)).si()).isZero();
        assertThat(HUNDRED.source()).isEqualTo(Source.given());
    }

    @Test
    void text() {
        assertThat(HUNDRED.text(UnitSystem.SI)).isEqualTo("duct: 7.854 L/m");
        assertThat(HUNDRED.text(UnitSystem.IP)).isEqualTo("duct: 0.6324 gal/ft");
    }

    @Test
    void outsideDiameterAndWall() {
        Pipe welded =
                Pipe.ofWall("welded tube", Length.millimetres(219.1), Length.millimetres(6.3), PipeMaterial.STEEL);
        assertThat(welded.bore().in(Units.MILLIMETRE)).isCloseTo(206.5, within(1e-9));
    }

    /** Sizes that no table has: a wall between two schedules, an outside diameter between two sizes. */
    @ParameterizedTest
    @CsvSource({"2.375 in, 0.190 in, 2.01671", "31 mm, 2.25 mm, 0.55155", "1.25 in, 0.05 in, 0.67012"})
    void sizesThatNoTableHas(String outside, String wall, double litresPerMetre) {
        Pipe between = Pipe.ofWall("between", Length.parse(outside), Length.parse(wall), PipeMaterial.STEEL);
        assertThat(between.litresPerMetre()).isCloseTo(litresPerMetre, within(litresPerMetre * 1e-4));
    }

    @Test
    void whatIsNoPipe() {
        assertThatThrownBy(() -> Pipe.ofBore("duct", Length.metres(0), PipeMaterial.STEEL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "bore of duct 0 mm (0 in) is not allowed: it must be above zero; give the inside diameter: outside"
                                + " diameter less twice the wall");
        assertThatThrownBy(
                        () -> Pipe.ofWall("tube", Length.millimetres(1), Length.millimetres(22), PipeMaterial.COPPER))
                .hasMessage(
                        "wall of tube 22 mm (0.8661 in) is not allowed: it must be above zero and less than half the outside"
                                + " diameter 1 mm (0.03937 in); check the order, outside diameter first, and the units");
        assertThatThrownBy(() -> HUNDRED.contents(Length.metres(-3)))
                .hasMessageStartingWith(
                        "length of duct -3000 mm (-118.1 in) is not allowed: it must be zero or more; ");
    }

    /** A wall of half the diameter fills the tube; a little less leaves a bore. */
    @Test
    void wallMustBeThereAndLeaveABore() {
        Length outside = Length.millimetres(20);
        for (double wall : new double[] {0, 10, 12}) {
            assertThatThrownBy(() -> Pipe.ofWall("tube", outside, Length.millimetres(wall), PipeMaterial.COPPER))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("less than half the outside diameter 20 mm");
        }
        assertThat(Pipe.ofWall("tube", outside, Length.millimetres(9.5), PipeMaterial.COPPER)
                        .bore()
                        .in(Units.MILLIMETRE))
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void aBoreWithoutFiniteContentsIsRefused() {
        assertThatThrownBy(() -> Pipe.ofBore("duct", Length.metres(1e160), PipeMaterial.STEEL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("bore of duct 1.0E160 m");
    }
}
