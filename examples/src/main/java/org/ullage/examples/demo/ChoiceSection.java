package org.ullage.examples.demo;

import org.jspecify.annotations.Nullable;
import org.ullage.quantity.UnitSystem;
import org.ullage.selection.Combination;
import org.ullage.selection.NextSizeDown;
import org.ullage.selection.RunnerUp;
import org.ullage.selection.Selection;

/** Which vessels are bought, and why not others. */
record ChoiceSection(Selection selection, @Nullable NextSizeDown smaller) implements Section {

    @Override
    public void print(Page page) {
        page.heading("The vessels, from an invented catalogue");
        page.valueHead();
        Combination chosen = selection.chosen();
        page.words("CHOSEN", chosen.toString());
        page.value("Nominal volume together", chosen.nominal());
        page.value("Acceptance together", chosen.acceptance());
        page.words("Price together", chosen.price().toPlainString());
        page.value("Floor or wall they take", chosen.footprint());
        page.value("Empty mass together", chosen.emptyMass());
        page.value("Larger than needed by", selection.oversize().volume());
        RunnerUp second = selection.runnerUp();
        if (second != null) {
            page.bullet("Runner-up: " + second.combination() + ", " + second.reason(UnitSystem.SI) + ".");
        }
        if (smaller != null) {
            page.bullet("Next size down: " + smaller.text(UnitSystem.SI) + ".");
        }
        page.bullet("One charge for all; each vessel has a lockable valve and a drain of its own.");
        selection.warnings().forEach(warning -> page.bullet(warning.toString()));
        page.line("");
        selection.front().text(UnitSystem.SI).lines().forEach(page::line);
    }
}
