package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.method.Jobs;
import org.ullage.method.Sizing;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselType;

class SizingReportTest {

    private static final Sizing SIZING = Methods.ASHRAE.size(
            Jobs.steel(TestFluid.WATER, VesselType.diaphragm(), Temperature.celsius(10), Temperature.celsius(80)));

    @ParameterizedTest
    @EnumSource
    void pageHasJobAnswerWarningsCautionsAndWorkings(UnitSystem system) {
        Document page = SizingReport.of(SIZING, system);
        Drawn.parse(page.html());
        assertThat(page.html()).isEqualTo(SizingReport.of(SIZING, system).html());
        String words = page.text().replaceAll("\\s+", " ");
        assertThat(words)
                .contains("required volume of the vessel, at least "
                        + SIZING.requiredVolume().text(system))
                .contains("gas charge, empty of water, at 20 degC "
                        + SIZING.preCharge().text(system))
                .contains("relief valve setting, gauge "
                        + SIZING.job().pressures().reliefSetting().text(system))
                .contains("highest temperature in operation "
                        + Temperature.celsius(80).text(system));
        assertThat(SIZING.warnings())
                .isNotEmpty()
                .allSatisfy(warning -> assertThat(words).contains(warning.toString()));
        assertThat(SIZING.cautions()).allSatisfy(caution -> assertThat(words).contains(caution.toString()));
        assertThat(SIZING.workings().steps())
                .allSatisfy(step -> assertThat(words).contains(step.source().toString()));
    }
}
