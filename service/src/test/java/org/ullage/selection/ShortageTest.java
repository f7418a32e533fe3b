package org.ullage.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/** What stands in the way, worked out by hand. Vessels of these tests take 1 m2 and weigh 200 kg empty for each 1000 L. */
class ShortageTest {

    private static final CatalogueItem B90 = Vessels.plain("B90", 90, 100);
    private static final CatalogueItem B50 = Vessels.plain("B50", 50, 60);
    private static final Density WATER = Density.kilogramsPerCubicMetre(1000);

    private static String text(SelectionJob job, CatalogueItem... items) {
        SelectionResult result = Vessels.catalogue(items).choose(job);
        assertThat(result).isInstanceOf(Shortage.class);
        return result.text(UnitSystem.SI);
    }

    @Test
    void tooFewVessels() {
        assertThat(text(Vessels.litres(600), B90, B50))
                .contains("number of vessels: allow 7 vessels instead of 6 (")
                .contains("required volume: at most 540 L nominal of 600 L (6 x B90, 540 L)");
    }

    @Test
    void notEvenTheMostVesselsDo() {
        assertThat(text(Vessels.litres(2000), B90))
                .contains("number of vessels: giving up this limit alone does not help");
    }

    @Test
    void footprint() {
        // 100 L: 50 + 50 takes 0.1 m2; within 0.09 m2 a single 90 L is the most
        assertThat(text(Vessels.litres(100).within(Area.squareMetres(0.09)), B90, B50))
                .contains("footprint: needs 0.1 m2, 0.01 m2 more than there is (2 x B50, 100 L)")
                .contains("required volume: at most 90 L nominal of 100 L (1 x B90, 90 L)");
    }

    @Test
    void load() {
        // 100 L weigh 100 + 20 kg
        assertThat(text(Vessels.litres(100).noHeavierThan(Mass.kilograms(110), WATER), B90, B50))
                .contains("waterlogged mass: needs 120 kg, 10 kg more than there is (2 x B50, 100 L)");
    }

    @Test
    void height() {
        CatalogueItem tall = Vessels.bladder("tall", 400, 10)
                .standing(Area.squareMetres(1), Length.metres(2.5))
                .build();
        CatalogueItem taller = Vessels.bladder("taller", 900, 5)
                .standing(Area.squareMetres(1), Length.metres(3))
                .build();
        assertThat(text(Vessels.litres(800).noTallerThan(Length.metres(2)), B90, tall, taller))
                .contains("height: needs 2.5 m, 0.5 m more than there is (2 x tall, 800 L)")
                .contains("not usable: tall: 2.5 m (8.202 ft) tall, there is 2 m (6.562 ft)");
    }

    @Test
    void stock() {
        CatalogueItem two = Vessels.bladder("two", 100, 10).stock(2).build();
        CatalogueItem none = Vessels.bladder("none", 300, 90).stock(0).build();
        assertThat(text(Vessels.litres(300), two, none))
                .contains("stock: order 1 more of two (3 x two, 300 L)")
                .contains("not usable: none: none in stock");
    }

    @Test
    void ratingTemperatureAndKind() {
        SelectionJob job = Vessels.litres(80).ratedFor(GaugePressure.bar(8)).ratedFor(Temperature.celsius(95));
        assertThat(text(job, B90))
                .contains("pressure rating: would do for a relief setting of at most 6 bar, if the loop allows that")
                .contains("required volume: giving up this limit alone does not help")
                .contains("not usable: B90: rated for 6 bar (87.02 psi), asked for 8 bar");
        assertThat(text(Vessels.litres(80).ratedFor(Temperature.celsius(120)), B90))
                .contains("would do at a place where it is never warmer than 100 degC")
                .contains("stands 100 degC (212 degF), asked for 120 degC");
        assertThat(text(Vessels.litres(80).ofKinds(Set.of(VesselKind.DIAPHRAGM)), B90))
                .contains("kind of vessel: allow bladder (1 x B90, 90 L)")
                .contains("kind bladder is not among those asked for");
    }

    @Test
    void sameSize() {
        CatalogueItem one = Vessels.bladder("one", 90, 10).stock(1).build();
        CatalogueItem other = Vessels.bladder("other", 50, 10).stock(1).build();
        assertThat(text(Vessels.litres(140).sameSizeOnly(), one, other))
                .contains("same size only: allow different sizes together (1 x one + 1 x other, 140 L)");
    }

    @Test
    void acceptance() {
        CatalogueItem tight = Vessels.bladder("tight", 100, 10)
                .acceptanceLimit(Volume.litres(10))
                .build();
        assertThat(text(SelectionJob.forVolumes(Volume.litres(200), Volume.litres(100)), tight))
                .contains("at most 600 L nominal of 200 L and 60 L acceptance of 100 L")
                .contains("allow 10 vessels instead of 6");
    }

    @Test
    void refusalSaysTheSame() {
        assertThatThrownBy(
                        () -> Vessels.catalogue(B90).choose(Vessels.litres(600)).orRefuse())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("allow 7 vessels instead of 6")
                .hasMessageContaining("540 L nominal of 600 L");
    }

    @Test
    void jobsThatMakeNoSenseAreRefused() {
        assertThatThrownBy(() -> SelectionJob.forVolumes(null, null)).isInstanceOf(MissingInputException.class);
        assertThatThrownBy(() -> Vessels.litres(0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Vessels.litres(1).atMost(0)).hasMessageContaining("from 1 to 12");
        assertThatThrownBy(() -> Vessels.litres(1).atMost(13)).hasMessageContaining("from 1 to 12");
        assertThatThrownBy(() -> Vessels.litres(1).ofKinds(Set.of())).isInstanceOf(MissingInputException.class);
        assertThatThrownBy(() -> Vessels.litres(1).noTallerThan(Length.metres(0)))
                .hasMessageContaining("height limit");
        assertThatThrownBy(() -> Vessels.litres(1).by(Objective.FEWEST, Objective.FEWEST))
                .hasMessageContaining("objectives");
    }
}
