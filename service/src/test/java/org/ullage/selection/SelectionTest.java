package org.ullage.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.Sizing;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** Cases that can be followed by hand. */
class SelectionTest {

    private static final CatalogueItem B80 = Vessels.plain("B80", 80, 90);
    private static final CatalogueItem B200 = Vessels.plain("B200", 200, 190);
    private static final CatalogueItem B300 = Vessels.plain("B300", 300, 330);
    private static final Catalogue CATALOGUE = Vessels.catalogue(B80, B200, B300);

    private static Selection choose(SelectionJob job) {
        return CATALOGUE.choose(job).orRefuse();
    }

    @Test
    void cheapestFewestAndRunnerUp() {
        // 270 L: 80 + 200 at 280, 300 at 330, 4 x 80 at 360, 200 + 200 at 380
        Selection cheapest = choose(Vessels.litres(270));
        assertThat(cheapest.chosen()).hasToString("1 x B200 + 1 x B80");
        RunnerUp second = cheapest.runnerUp();
        assertThat(second.combination()).hasToString("1 x B300");
        assertThat(second.decidedBy()).isEqualTo(Objective.CHEAPEST);
        assertThat(second.reason(UnitSystem.SI)).isEqualTo("price 50 more");
        Selection fewest = choose(Vessels.litres(270).by(Objective.FEWEST));
        assertThat(fewest.chosen()).hasToString("1 x B300");
        assertThat(fewest.runnerUp().reason(UnitSystem.SI)).isEqualTo("vessels 1 more");
    }

    @Test
    void totals() {
        Combination chosen = choose(Vessels.litres(270)).chosen();
        assertThat(chosen.vessels()).isEqualTo(2);
        assertThat(chosen.nominal().in(Units.LITRE)).isCloseTo(280, within(1e-9));
        assertThat(chosen.price()).isEqualByComparingTo("280");
        assertThat(chosen.footprint().si()).isCloseTo(0.28, within(1e-12));
        assertThat(chosen.emptyMass().si()).isCloseTo(56, within(1e-9));
        assertThat(chosen.waterloggedMass(Density.kilogramsPerCubicMetre(1000)).si())
                .isCloseTo(336, within(1e-9));
        assertThat(chosen.tallest().si()).isEqualTo(1);
    }

    @Test
    void aShareThatIsNoFiniteNumberOfPercentIsRefused() {
        assertThatThrownBy(() -> new Oversize(Volume.litres(1), 1e307, BigDecimal.ZERO))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("share of the required volume");
    }

    @Test
    void oversizeCostsItsShareOfThePrice() {
        // 10 L of 280 L, price 280: 1 a litre
        Oversize oversize = choose(Vessels.litres(270)).oversize();
        assertThat(oversize.volume().in(Units.LITRE)).isCloseTo(10, within(1e-9));
        assertThat(oversize.share()).isCloseTo(10 / 270.0, within(1e-12));
        assertThat(oversize.cost()).isEqualTo(new BigDecimal("10.00"));
    }

    @Test
    void sameSizeOnly() {
        assertThat(choose(Vessels.litres(270).sameSizeOnly()).chosen()).hasToString("1 x B300");
    }

    @Test
    void gallonsThatAddUpExactlyAreEnough() {
        // seven times 34 gal is 238 gal in decimals, not in doubles
        CatalogueItem item =
                Vessels.bladder("G34", 1, 1).nominal(Volume.gallons(34)).build();
        for (int count = 1; count <= 12; count++) {
            Combination chosen = Vessels.catalogue(item)
                    .choose(SelectionJob.forVolumes(Volume.gallons(34 * count), null)
                            .atMost(12))
                    .orRefuse()
                    .chosen();
            assertThat(chosen.vessels()).isEqualTo(count);
        }
    }

    @Test
    void smallAcceptanceLimitDoesNotBorrowFromItsNeighbour() {
        // 100 L nominal for 50 L of water: every vessel fills to half, so the first takes 5 L of its 50 and not more
        CatalogueItem tight = Vessels.bladder("tight", 50, 1)
                .acceptanceLimit(Volume.litres(5))
                .build();
        CatalogueItem roomy = Vessels.bladder("roomy", 50, 30).build();
        SelectionJob job =
                SelectionJob.forVolumes(Volume.litres(100), Volume.litres(50)).atMost(2);
        // tight + roomy would add up to 100 L nominal and 55 L acceptance, but take only 5 + 25 = 30 L at the final
        // pressure
        assertThat(Vessels.catalogue(tight, roomy).choose(job).orRefuse().chosen())
                .hasToString("2 x roomy");
    }

    @Test
    void tieIsWonByTheLargerVesselThenByThePlaceInTheCatalogue() {
        CatalogueItem first = Vessels.bladder("first", 100, 7).build();
        CatalogueItem twin = Vessels.bladder("twin", 100, 7).build();
        Selection selection =
                Vessels.catalogue(first, twin).choose(Vessels.litres(100)).orRefuse();
        assertThat(selection.chosen()).hasToString("1 x first");
        assertThat(selection.runnerUp().combination()).hasToString("1 x twin");
        assertThat(selection.runnerUp().decidedBy()).isNull();
        assertThat(selection.runnerUp().reason(UnitSystem.SI)).startsWith("equal in every objective");
    }

    @Test
    void nothingElseNoRunnerUp() {
        Selection only = Vessels.catalogue(B80).choose(Vessels.litres(100)).orRefuse();
        assertThat(only.runnerUp()).isNull();
        assertThat(only.text(UnitSystem.SI)).contains("runner-up: none");
    }

    @Test
    void frontOfPriceFootprintAndNumber() {
        // 80 + 200: 280, 0.28 m2, 2 vessels; 300: 330, 0.30 m2, 1 vessel; all others are beaten
        assertThat(choose(Vessels.litres(270)).front().combinations())
                .map(Combination::toString)
                .containsExactly("1 x B200 + 1 x B80", "1 x B300");
        assertThat(choose(Vessels.litres(270)).front().text(UnitSystem.SI))
                .contains("price  footprint  vessels")
                .contains("330    0.3 m2     1");
    }

    @Test
    void nextSizeDownByTheGasLaw() {
        // p0 = pi = 2 bar, pf = 4 bar, water 100 L: V = 100 / (1 - 2/4) = 200 L; 160 L: 2 / (1 - 100/160) = 5.333 bar
        SizedGas cushion = new SizedGas(
                AbsolutePressure.bar(2),
                AbsolutePressure.bar(2),
                AbsolutePressure.bar(4),
                AbsolutePressure.bar(6),
                Volume.litres(100),
                AbsolutePressure.bar(1));
        CatalogueItem b160 = Vessels.plain("B160", 160, 150);
        Selection selection = Vessels.catalogue(B80, b160, B200)
                .choose(Vessels.litres(200).by(Objective.FEWEST))
                .orRefuse();
        NextSizeDown down = selection.nextSizeDown(cushion);
        assertThat(down.combination()).hasToString("1 x B160");
        assertThat(down.reached().si()).isCloseTo(GaugePressure.bar(13.0 / 3).si(), within(1e-6));
        assertThat(down.beyondAllowed().si()).isCloseTo(4e5 / 3, within(1e-6));
        assertThat(down.marginUsed()).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(down.text(UnitSystem.SI))
                .isEqualTo(
                        "1 x B160 (160 L) would reach 4.333 bar, 1.333 bar above the highest pressure allowed: 66.7 % of"
                                + " the margin below the relief setting");
        Selection small =
                Vessels.catalogue(B80, B200).choose(Vessels.litres(200)).orRefuse();
        assertThat(small.nextSizeDown(cushion).reached()).isNull();
        assertThat(small.nextSizeDown(cushion).text(UnitSystem.SI)).contains("could not take the water in");
    }

    @Test
    void acceptanceLimitOfTheNextSizeDownPushesTheWaterIntoItsNeighbour() {
        // 40 L of water, p0 = pi = 1 bar: the first stops at 10 L, the other 100 L take 30 L: p = 1 / (1 - 0.3)
        CatalogueItem tight = Vessels.bladder("tight", 90, 1)
                .acceptanceLimit(Volume.litres(10))
                .build();
        CatalogueItem roomy = Vessels.bladder("roomy", 100, 2).build();
        assertThat(WaterShare.of(List.of(roomy, tight), 0.040)).isCloseTo(0.3, within(1e-12));
        assertThat(WaterShare.of(List.of(roomy, tight), 0.019)).isCloseTo(0.1, within(1e-12));
        assertThat(WaterShare.of(List.of(tight), 0.011)).isInfinite();
    }

    @Test
    void jobOfASizingTakesWhatTheSizingKnows() {
        Sizing sizing = Methods.EN_12828.size(
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)));
        SelectionJob job = SelectionJob.of(sizing);
        assertThat(job.requirement().nominal()).isEqualTo(sizing.gasLawVolume());
        assertThat(job.requirement().acceptance()).isEqualTo(sizing.acceptanceVolume());
        assertThat(job.requirement().rating()).isEqualTo(GaugePressure.bar(3));
        assertThat(job.requirement().temperature()).isEqualTo(Temperature.celsius(80));
        assertThat(job.requirement().kinds()).containsExactly(VesselKind.BLADDER);
        assertThat(job.limits().fluid().si()).isCloseTo(1000 / 1.005, within(1e-9));
        Selection selection = CATALOGUE.choose(job).orRefuse();
        assertThat(selection.chosen().nominal()).isGreaterThanOrEqualTo(sizing.requiredVolume());
        NextSizeDown down = selection.nextSizeDown(SizedGas.of(sizing));
        assertThat(down.combination().nominal()).isLessThan(sizing.requiredVolume());
        assertThat(selection.text(UnitSystem.SI)).contains(", waterlogged ");
    }

    @Test
    void textTellsWhatWasChosenAndWhy() {
        String text = choose(
                        Vessels.litres(270).ratedFor(GaugePressure.bar(3)).by(Objective.CHEAPEST, Objective.LIGHTEST))
                .text(UnitSystem.SI);
        assertThat(text)
                .contains("count  vessel  kind     nominal  acceptance  rated for  height  connection  price each")
                .contains("1      B200    bladder  200 L")
                .contains("required: nominal 270 L, acceptance not given")
                .contains(
                        "total: nominal 280 L, acceptance 280 L, price 280, footprint 0.28 m2, empty 56 kg, waterlogged not"
                                + " known (density not given), tallest 1 m")
                .contains("chosen for: least price 280, then least empty mass 56 kg, then least vessels 2")
                .contains(
                        "oversize: 10 L, 3.7 % beyond the required volume; at the selection's own price by volume it costs"
                                + " 10.00")
                .contains("runner-up: 1 x B300: price 50 more")
                .contains("warning: The highest temperature was not given")
                .doesNotContain("warning: The relief setting")
                .contains("caution: A waterlogged vessel weighs")
                .matches("\\A\\p{ASCII}*\\z");
        assertThat(choose(Vessels.litres(270)).text(UnitSystem.IP))
                .contains("71.33 gal")
                .doesNotContain(" L,");
    }

    @Test
    void unknownLimitAndStockOfTheChosenAreWarnedOf() {
        CatalogueItem unknown = CatalogueItem.named("D", VesselKind.DIAPHRAGM)
                .nominal(Volume.litres(100))
                .maximum(GaugePressure.bar(3), Temperature.celsius(90))
                .emptyMass(Mass.kilograms(9))
                .standing(B80.footprint(), B80.height())
                .price(BigDecimal.TEN)
                .build();
        assertThat(Vessels.catalogue(unknown)
                        .choose(Vessels.litres(100))
                        .orRefuse()
                        .warnings())
                .map(Object::toString)
                .anyMatch(warning ->
                        warning.startsWith("Acceptance limit not known, counted with the whole nominal volume: D."))
                .anyMatch(warning -> warning.startsWith("Stock not known, counted as unlimited: D."));
    }
}
