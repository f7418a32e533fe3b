package org.ullage.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ullage.condition.LoopTrait.ALUMINIUM;
import static org.ullage.condition.LoopTrait.GLYCOL;
import static org.ullage.condition.LoopTrait.LOW_SALT;
import static org.ullage.condition.LoopTrait.SALINE;
import static org.ullage.condition.LoopTrait.SOLAR;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;

class FluidFindingsTest {

    private static Finding only(FluidSample sample) {
        return FluidFindings.of(sample).findings().get(0);
    }

    /** VDI 2035 Part 1 (2021-03): pH 8.2 to 10 at 25 degC; second-hand. */
    @ParameterizedTest
    @CsvSource({"8.1, TREAT", "8.2, WATCH", "8.3, KEEP", "9.5, KEEP", "9.6, WATCH", "10.0, WATCH", "10.1, TREAT"})
    void heatingWaterIsJudgedByItsGuideline(double ph, Verdict expected) {
        assertThat(only(FluidSample.of().with(SampleValue.ph(ph))).verdict()).isEqualTo(expected);
    }

    /** The 2009 and the 2021 edition of VDI 2035 barely overlap for aluminium: 6.5 to 8.5 against 8.2 to 9.0. */
    @ParameterizedTest
    @CsvSource({"8.0, true, TREAT", "8.3, false, KEEP", "8.8, true, TREAT"})
    void bothEditionsForAluminiumAreShown(double ph, boolean contradicted, Verdict expected) {
        Finding finding = only(FluidSample.of(ALUMINIUM).with(SampleValue.ph(ph)));
        assertThat(finding.isContradicted()).isEqualTo(contradicted);
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(finding.judgements()).hasSize(2);
    }

    /** MO-405 prints 6.0 on one page and 7.0 on another; a magazine warns at 8 and below, and replaces below 7. */
    @ParameterizedTest
    @CsvSource({"5.9, REPLACE", "6.1, REPLACE", "6.8, REPLACE", "7.0, WATCH", "8.0, WATCH", "8.1, KEEP"})
    void theStrictestLimitDecidesForGlycol(double ph, Verdict expected) {
        assertThat(only(FluidSample.of(GLYCOL, SOLAR).with(SampleValue.ph(ph))).verdict())
                .isEqualTo(expected);
    }

    @Test
    void aContradictionNamesBothPages() {
        Finding finding = only(FluidSample.of(GLYCOL).with(SampleValue.ph(6.7)));
        assertThat(finding.isContradicted()).isTrue();
        assertThat(finding.decidedBy()).isNotNull();
        assertThat(finding.text())
                .startsWith("pH 6.7 -> replace: at least 7")
                .contains("keep: at least 6 (reinhibit or replace below)")
                .contains("the strictest decides unless");
    }

    @Test
    void theDataSheetDecidesAndTheOthersAreStillShown() {
        SampleLimit own = SampleLimit.ofDataSheet(
                SampleQuantity.PH, 6.2, null, Verdict.REPLACE, "limit of the fluid in this loop");
        Finding finding = only(FluidSample.of(GLYCOL).with(SampleValue.ph(6.7)).withDataSheet(own));
        assertThat(finding.verdict()).isEqualTo(Verdict.KEEP);
        assertThat(finding.decidedBy()).isEqualTo(own);
        assertThat(finding.judgements()).hasSizeGreaterThan(4);
    }

    @Test
    void conductivityNeedsTheWayTheLoopIsRun() {
        assertThat(only(FluidSample.of(LOW_SALT).with(SampleValue.conductivity(100)))
                        .verdict())
                .isEqualTo(Verdict.TREAT);
        assertThat(only(FluidSample.of(LOW_SALT).with(SampleValue.conductivity(99)))
                        .verdict())
                .isEqualTo(Verdict.KEEP);
        assertThat(only(FluidSample.of(SALINE).with(SampleValue.conductivity(600)))
                        .verdict())
                .isEqualTo(Verdict.WATCH);
        assertThat(only(FluidSample.of(SALINE).with(SampleValue.conductivity(1501)))
                        .verdict())
                .isEqualTo(Verdict.TREAT);
    }

    @Test
    void oxygenWithoutTheOperationIsUndecidedAndSaysWhatToAsk() {
        Finding finding = only(FluidSample.of().with(SampleValue.oxygen(0.05)));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding.meaning())
                .isEqualTo(
                        "say how the loop is run: low-salt operation below 0.1 mg/L; saline operation below 0.02 mg/L");
        assertThat(only(FluidSample.of(SALINE).with(SampleValue.oxygen(0.05))).verdict())
                .isEqualTo(Verdict.TREAT);
        assertThat(only(FluidSample.of(LOW_SALT).with(SampleValue.oxygen(0.05))).verdict())
                .isEqualTo(Verdict.KEEP);
    }

    /** MO-405: reserve alkalinity not below 8.0 mL; a supplier's page: 10 to 12 adequate. */
    @ParameterizedTest
    @CsvSource({"7.9, REPLACE", "8.0, WATCH", "10, KEEP", "12, KEEP"})
    void reserveAlkalinity(double millilitres, Verdict expected) {
        assertThat(only(FluidSample.of(GLYCOL).with(SampleValue.reserveAlkalinity(millilitres)))
                        .verdict())
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"19, REPLACE", "22, TREAT", "30, KEEP", "55, WATCH", "61, TREAT"})
    void concentration(double percent, Verdict expected) {
        FluidSample sample = FluidSample.of(GLYCOL).with(SampleValue.glycol(VolumeFraction.percent(percent)));
        assertThat(only(sample).verdict()).isEqualTo(expected);
    }

    @Test
    void frostAndHeat() {
        FluidSample sample = FluidSample.of(GLYCOL, SOLAR)
                .freezingAt(Temperature.celsius(-12), Temperature.celsius(-20))
                .heatedTo(Temperature.celsius(177));
        FluidFindings findings = FluidFindings.of(sample);
        assertThat(findings.findings()).hasSize(2);
        assertThat(findings.findings().get(0).text()).contains("does not protect down to the -20 degC (-4 degF)");
        assertThat(findings.findings().get(1).verdict()).isEqualTo(Verdict.TREAT);
        assertThat(FluidFindings.of(FluidSample.of(GLYCOL).heatedTo(Temperature.celsius(130)))
                        .verdict())
                .isEqualTo(Verdict.WATCH);
        assertThat(FluidFindings.of(FluidSample.of(GLYCOL).heatedTo(Temperature.celsius(90)))
                        .verdict())
                .isEqualTo(Verdict.KEEP);
        assertThat(FluidFindings.of(FluidSample.of().heatedTo(Temperature.celsius(90)))
                        .findings())
                .isEmpty();
    }

    /** MO-405 and a magazine both print 7.0: the document is named first, as it stands first. */
    @Test
    void ofLimitsThatAgreeTheFirstDecides() {
        Finding finding = only(FluidSample.of(GLYCOL).with(SampleValue.ph(6.8)));
        assertThat(finding.decidedBy().meaning()).isEqualTo("reinhibit or replace below");
        assertThat(finding.source().document()).contains("MO-405");
    }

    @ParameterizedTest
    @CsvSource({"-19.9, TREAT, does not protect down to", "-20, KEEP, protects down to", "-25, KEEP, protects down to"})
    void protectionToTheColdItMustStandIsEnough(double freezing, Verdict expected, String words) {
        Finding finding =
                only(FluidSample.of(GLYCOL).freezingAt(Temperature.celsius(freezing), Temperature.celsius(-20)));
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(finding.meaning()).startsWith(words);
    }

    /** Ageing above 250 degF (121 degC), bulk limit of solar grade 160 degC: both are limits, not yet beyond. */
    @ParameterizedTest
    @CsvSource({
        "121, KEEP, not above 121 degC",
        "122, WATCH, above 121 degC",
        "160, WATCH, above 121 degC",
        "161, TREAT, above the bulk limit"
    })
    void heatCountsFromAboveItsLimit(double hottest, Verdict expected, String words) {
        Finding finding = only(FluidSample.of(GLYCOL).heatedTo(Temperature.celsius(hottest)));
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(finding.meaning()).startsWith(words);
    }

    @Test
    void eyesAndNoseCount() {
        FluidFindings findings = FluidFindings.of(FluidSample.of(GLYCOL).with(Look.DARK, Smell.BURNT));
        assertThat(findings.verdict()).isEqualTo(Verdict.REPLACE);
        assertThat(findings.text()).contains("look darkened -> treat").contains("smell burnt -> replace");
        assertThat(FluidFindings.of(FluidSample.of().with(Look.YELLOW_BROWN, Smell.NONE))
                        .verdict())
                .isEqualTo(Verdict.TREAT);
    }

    @Test
    void nothingLookedAtIsUndecided() {
        assertThat(FluidFindings.of(FluidSample.of()).verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(FluidFindings.of(FluidSample.of()).cautions().get(0).text()).contains("thinnest metal");
    }

    @Test
    void badInputIsRefused() {
        assertThatThrownBy(() -> SampleValue.ph(14.5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("pH 14.5")
                .hasMessageContaining("from 0 to 14");
        assertThatThrownBy(() -> SampleValue.conductivity(Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FluidSample.of().with(SampleValue.ph(8)).with(SampleValue.ph(9)))
                .hasMessageContaining("given once");
        assertThatThrownBy(() -> FluidSample.of(LOW_SALT, SALINE)).hasMessageContaining("one of the two");
        assertThatThrownBy(() -> SampleLimit.ofDataSheet(SampleQuantity.PH, null, null, Verdict.TREAT, "x"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("without an end");
        assertThatThrownBy(() -> SampleLimit.ofDataSheet(SampleQuantity.PH, 9.0, 8.0, Verdict.TREAT, "x"))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void theThinnestMetalIsNamed() {
        WettedMetal shell = new WettedMetal("shell of the vessel, steel", Length.millimetres(1.2));
        WettedMetal plate = new WettedMetal("plate heat exchanger, stainless steel", Length.millimetres(0.4));
        assertThat(WettedMetal.thinnest(List.of(shell, plate))).isEqualTo(plate);
        assertThat(plate.note().text()).contains("plate heat exchanger, stainless steel, 0.4 mm (0.01575 in)");
        assertThatThrownBy(() -> WettedMetal.thinnest(List.of())).isInstanceOf(MissingInputException.class);
        assertThatThrownBy(() -> new WettedMetal("x", Length.millimetres(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void everyLimitIsUsedSomewhereAndHasASource() {
        assertThat(PublishedLimits.all()).allSatisfy(limit -> {
            assertThat(limit.source().document()).isNotBlank();
            assertThat(limit.of(limit.quantity().least())
                            .compareTo(limit.of(limit.quantity().most())))
                    .as("one of the ends is outside, or both: %s", limit)
                    .satisfiesAnyOf(
                            difference -> assertThat(difference).isNotZero(),
                            difference -> assertThat(limit.of(limit.quantity().least()))
                                    .isEqualTo(limit.outside()));
        });
    }

    @Test
    void survivesAStream() throws Exception {
        FluidFindings findings = FluidFindings.of(FluidSample.of(GLYCOL)
                .with(SampleValue.ph(6.7))
                .with(Look.DARK, Smell.NONE)
                .freezingAt(Temperature.celsius(-12), Temperature.celsius(-10)));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(findings);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(findings);
        }
    }
}
