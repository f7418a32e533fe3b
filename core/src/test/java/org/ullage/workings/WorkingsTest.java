package org.ullage.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

class WorkingsTest {

    private static final Step GIVEN =
            Step.given("contents", Term.of("V_s", Volume.litres(1200)), "given", Source.given());

    private static final Step STEP = new Step(
            "nominal volume",
            "V_x / (p_0 / p_i)",
            List.of(
                    Term.of("V_x", Volume.litres(26)),
                    Term.of("p_0", AbsolutePressure.bar(2)),
                    Term.of("p_i", AbsolutePressure.bar(2.5))),
            Term.of("V_nominal", Volume.litres(32.5)),
            Source.computed("Boyle's law", "re-arranged"));

    private static final Workings WORKINGS = new Workings("An invented vessel", List.of(GIVEN, STEP));

    @Test
    void alignedMetricText() {
        assertThat(WORKINGS.text(UnitSystem.SI)).isEqualTo("""
                An invented vessel
                  1  V_s       = 1200 L  (given)
                                 contents
                                 [GIVEN] the caller's value
                  2  V_nominal = V_x / (p_0 / p_i)
                               = 26 L / (2 bar abs / 2.5 bar abs)
                               = 32.5 L
                                 nominal volume
                                 [COMPUTED] Boyle's law, re-arranged
                """);
    }

    @Test
    void alignedInchPoundText() {
        assertThat(WORKINGS.text(UnitSystem.IP)).isEqualTo("""
                An invented vessel
                  1  V_s       = 317.006 gal  (given)
                                 contents
                                 [GIVEN] the caller's value
                  2  V_nominal = V_x / (p_0 / p_i)
                               = 6.86847 gal / (29.0075 psi abs / 36.2594 psi abs)
                               = 8.58559 gal
                                 nominal volume
                                 [COMPUTED] Boyle's law, re-arranged
                """);
    }

    @Test
    void theNumberOfAStepMayHaveManyDigits() {
        assertThat(new Workings("many", Collections.nCopies(1000, GIVEN))
                        .text(UnitSystem.SI)
                        .lines())
                .contains("  1  V_s = 1200 L  (given)", " 10  V_s = 1200 L  (given)", "1000  V_s = 1200 L  (given)");
    }

    @Test
    void noStepsIsTheTitleAlone() {
        assertThat(new Workings("nothing to do", List.of()).text(UnitSystem.SI)).isEqualTo("nothing to do\n");
    }

    @Test
    void textIsTheSameInEveryLocale() {
        String text = WORKINGS.text(UnitSystem.SI);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(WORKINGS.text(UnitSystem.SI)).isEqualTo(text);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void laterChangesOfTheListDoNotReachIt() {
        List<Step> steps = new ArrayList<>(List.of(GIVEN, STEP));
        Workings workings = new Workings("An invented vessel", steps);
        steps.clear();
        assertThat(workings).isEqualTo(WORKINGS);
    }

    @Test
    void aStreamBringsThemBack() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(WORKINGS);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(WORKINGS);
        }
    }

    @Test
    void aCautionIsOneLineWithItsSource() {
        assertThat(new Caution("Isolate the vessel first.", Source.commonPractice("work on vessels")))
                .hasToString("Isolate the vessel first. [COMMON_PRACTICE] work on vessels");
    }

    @Test
    void valueThatIsOnlyPassedOnIsPrintedOnce() {
        Term cold = Term.of("p_i", AbsolutePressure.bar(2));
        Step charge =
                new Step("gas charge", "p_i", List.of(cold), Term.of("p_0", AbsolutePressure.bar(2)), Source.given());
        assertThat(new Workings("title", List.of(charge)).text(UnitSystem.SI))
                .contains("p_0 = p_i\n         = 2 bar abs\n           gas charge");
    }
}
