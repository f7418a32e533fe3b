package org.ullage.examples.demo;

import java.util.Comparator;
import java.util.List;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeClasses;
import org.ullage.method.Sizing;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.selection.CatalogueItem;
import org.ullage.selection.Combination;
import org.ullage.selection.GasCushion;
import org.ullage.selection.Selection;
import org.ullage.support.ContainedFluid;
import org.ullage.support.ShellMass;
import org.ullage.support.VesselWeight;

/** The whole page, section by section. */
final class DemoPage {

    private static final Gauge GAUGE = Gauge.of(GaugePressure.bar(0), GaugePressure.bar(4), GaugeClasses.EN_1_6);

    private DemoPage() {}

    static void print(Page page) {
        Sizing sizing = DemoBuilding.ready().by(Methods.ASHRAE).size();
        Selection bought =
                DemoCatalogue.VESSELS.choose(DemoBuilding.choice(sizing)).orRefuse();
        VesselWeight each = heaviest(bought.chosen());
        List<Section> sections = List.of(
                new JobSection(sizing),
                new AnswerSection(sizing),
                new CautionSection("Warnings about this answer", sizing.warnings()),
                new CautionSection("Cautions for the work", sizing.cautions()),
                new ChoiceSection(bought, bought.nextSizeDown(GasCushion.of(sizing))),
                new ChargeSection(DemoBuilding.charge(sizing, bought.chosen().nominal()), GAUGE),
                new SupportSection(each, DemoBuilding.bracket(each), DemoBuilding.removal(each)),
                new ComparisonSection(sizing.job()),
                new WorkingsSection(sizing.workings(), "Workings, metric", UnitSystem.SI),
                new WorkingsSection(sizing.workings(), "Workings, inch-pound", UnitSystem.IP));
        page.title("Expansion vessel of " + DemoBuilding.NAME);
        sections.forEach(section -> section.print(page));
    }

    private static VesselWeight heaviest(Combination chosen) {
        CatalogueItem largest = chosen.lines().stream()
                .map(Combination.Line::item)
                .max(Comparator.comparing(CatalogueItem::nominal))
                .orElseThrow();
        return new VesselWeight(largest.nominal(), ShellMass.fromPlate(largest.emptyMass()), ContainedFluid.WATER);
    }
}
