package org.ullage.examples.demo;

import java.util.List;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeClasses;
import org.ullage.method.Sizing;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.selection.Selection;
import org.ullage.selection.SizedGas;
import org.ullage.support.VesselWeight;

/** The whole page, section by section. */
final class DemoPage {

    private static final Gauge GAUGE = Gauge.of(GaugePressure.bar(0), GaugePressure.bar(4), GaugeClasses.EN_1_6);

    private DemoPage() {}

    static void print(Page page, DemoStory story) {
        Sizing sizing = story.sizing();
        Selection bought = story.bought();
        VesselWeight each = story.weight();
        List<Section> sections = List.of(
                new JobSection(sizing),
                new AnswerSection(sizing),
                new CautionSection("Warnings about this answer", sizing.warnings()),
                new CautionSection("Cautions for the work", sizing.cautions()),
                new ChoiceSection(bought, bought.nextSizeDown(SizedGas.of(sizing))),
                new ChargeSection(story.plan(), GAUGE),
                new SupportSection(each, DemoBuilding.bracket(each), DemoBuilding.removal(each)),
                new RecordSection(story.book(), sizing.atmosphere()),
                new ComparisonSection(sizing.job()),
                new WorkingsSection(sizing.workings(), "Workings, metric", UnitSystem.SI),
                new WorkingsSection(sizing.workings(), "Workings, inch-pound", UnitSystem.IP));
        page.title("Expansion vessel of " + DemoBuilding.NAME);
        sections.forEach(section -> section.print(page));
    }
}
