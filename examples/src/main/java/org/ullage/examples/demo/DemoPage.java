package org.ullage.examples.demo;

import java.util.List;
import org.ullage.method.Sizing;
import org.ullage.published.Methods;
import org.ullage.quantity.UnitSystem;

/** The whole page, section by section. */
final class DemoPage {

    private DemoPage() {}

    static void print(Page page) {
        Sizing sizing = DemoBuilding.ready().by(Methods.ASHRAE).size();
        List<Section> sections = List.of(
                new JobSection(sizing),
                new AnswerSection(sizing),
                new CautionSection("Warnings about this answer", sizing.warnings()),
                new CautionSection("Cautions for the work", sizing.cautions()),
                new ComparisonSection(sizing.job()),
                new WorkingsSection(sizing.workings(), "Workings, metric", UnitSystem.SI),
                new WorkingsSection(sizing.workings(), "Workings, inch-pound", UnitSystem.IP));
        page.title("Expansion vessel of " + DemoBuilding.NAME);
        sections.forEach(section -> section.print(page));
    }
}
