package org.ullage.selection;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;

/** What could not be checked, and the dangers of the work. */
final class SelectionCautions {

    private static final Source USUAL_CARE = Source.commonPractice("usual care on pressurised loops");

    static final List<Caution> CAUTIONS = List.of(
            caution(
                    "Codes and the instructions of vessels and boiler that hold on site, and the judgement of a licensed person, come"
                            + " before this selection."),
            caution(
                    "Vessels side by side must all be charged to the same pressure and joined to the loop at the same point; check"
                            + " each by itself."),
            caution(
                    "A waterlogged vessel weighs its shell and its whole nominal volume of fluid: let a qualified person check floor,"
                            + " brackets and fixings for that."));

    private SelectionCautions() {}

    static List<Caution> warnings(Selection selection) {
        Requirement requirement = selection.job().requirement();
        List<Caution> warnings = new ArrayList<>();
        if (requirement.rating() == null) {
            warnings.add(
                    caution("The relief setting was not given: whether the vessels are rated for it was not checked."));
        }
        if (requirement.temperature() == null) {
            warnings.add(
                    caution("The highest temperature was not given: whether the vessels stand it was not checked."));
        }
        if (requirement.acceptance() == null) {
            warnings.add(caution(
                    "The acceptance volume was not given: whether acceptance limits are enough was not checked."));
        }
        if (requirement.nominal() == null) {
            warnings.add(caution("The nominal volume was not given: whether the gas law is kept was not checked."));
        }
        String unlimited = ids(selection.chosen(), CatalogueItem::lacksAcceptanceLimit);
        if (!unlimited.isEmpty()) {
            warnings.add(
                    caution("Acceptance limit not known, counted with the whole nominal volume: " + unlimited + "."));
        }
        String unstocked = ids(selection.chosen(), item -> item.stock() == null);
        if (!unstocked.isEmpty()) {
            warnings.add(caution("Stock not known, counted as unlimited: " + unstocked + "."));
        }
        return List.copyOf(warnings);
    }

    private static String ids(Combination chosen, Predicate<CatalogueItem> which) {
        return chosen.lines().stream()
                .map(Combination.Line::item)
                .filter(which)
                .map(CatalogueItem::id)
                .collect(Collectors.joining(", "));
    }

    private static Caution caution(String text) {
        return new Caution(text, USUAL_CARE);
    }
}
