package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ullage.condition.LoopTrait;
import org.ullage.quantity.GaugePressure;

/** What concerns the loop as a whole: relief valve, feed valve, fluid, filling. */
final class LoopChecks {

    private LoopChecks() {}

    static List<ChecklistItem> of(ServiceBook book) {
        CommissioningNote note = book.commissioning();
        List<ChecklistItem> items = new ArrayList<>();
        items.add(new ChecklistItem(
                "Relief valve: look for lime, rust and water at its outlet; try it by its lever if its instructions ask for it, and see that"
                        + " it closes tight. Its setting: " + text(note.reliefSetting()) + ".",
                "Signs of discharge mean that the vessel did not take the expansion or the loop was filled too high.",
                CheckSources.RELIEF_INSTRUCTIONS));
        items.add(new ChecklistItem(
                "Feed valve: read its setting, shut it for a day with the loop cold and see whether the pressure holds; read the make-up"
                        + " meter.",
                "A feed valve that passes lifts the relief valve hot and cold, and hides leaks; make-up brings oxygen.",
                CheckSources.JUDGEMENT));
        items.add(fluid(book));
        items.add(fill(note.fill()));
        items.add(mark(note.fill()));
        items.add(new ChecklistItem(
                "Heat to the highest temperature once, vent, note pressure and temperature" + hottest(note.fill())
                        + ".",
                "The swing shows whether the vessel still takes the expansion.",
                CheckSources.JUDGEMENT));
        items.add(new ChecklistItem(
                "Write the visit into the record: charge as found and as left with the temperature of the shell, make-up, changes to the system.",
                "The next person sees a trend only if both charges are written down; after a change the size may no longer hold.",
                CheckSources.WATER_LOOK));
        return items;
    }

    private static ChecklistItem fluid(ServiceBook book) {
        LoopNote loop = book.commissioning().loop();
        String fluid = loop == null ? null : loop.fluid();
        if (isGlycol(book, loop, fluid)) {
            return new ChecklistItem(
                    "Fluid: take a sample; measure concentration, freezing point, pH and inhibitor. No make-up with plain water. Catch"
                            + " what drains: never into a drain or drinking water.",
                    "Spent glycol turns acid and corrodes the thinnest metal first; dilution takes frost protection and inhibitor.",
                    CheckSources.USUAL_CARE);
        }
        if (fluid == null) {
            return new ChecklistItem(
                    "Fluid: find out what the loop is filled with and record it; until then treat it as antifreeze and catch what drains.",
                    "The record does not say, and limits, expansion and frost depend on it.",
                    CheckSources.JUDGEMENT);
        }
        return new ChecklistItem(
                "Fluid (" + PlainText.shortened(fluid)
                        + "): let a sample stand for five minutes and look at it; measure pH and conductivity.",
                "Yellow or brown: iron corrodes; look for air drawn in at low pressure and for frequent make-up.",
                CheckSources.WATER_LOOK);
    }

    private static boolean isGlycol(ServiceBook book, @Nullable LoopNote loop, @Nullable String fluid) {
        boolean concentration =
                loop != null && (loop.volumeConcentration() != null || loop.massConcentration() != null);
        boolean named = fluid != null && fluid.toLowerCase(Locale.ROOT).contains("glycol");
        return concentration
                || named
                || book.visits().stream()
                        .map(VisitRecord::sample)
                        .filter(Objects::nonNull)
                        .anyMatch(sample -> sample.traits().contains(LoopTrait.GLYCOL));
    }

    private static ChecklistItem fill(@Nullable FillNote fill) {
        String pressure = fill == null || fill.pressure() == null
                ? "which is not recorded: take it from static head and charge, and record it"
                : text(fill.pressure()) + " recorded";
        return new ChecklistItem(
                "Fill: with the charge set, the drain shut and the valve of the vessel open and locked, fill the cold loop to its fill pressure, "
                        + pressure + ".",
                "Filled to less than its charge the vessel holds no water, and the first cooling draws in air.",
                CheckSources.BOILER_INSTRUCTIONS);
    }

    private static ChecklistItem mark(@Nullable FillNote fill) {
        return new ChecklistItem(
                fill != null && fill.minimumMark() != null
                        ? "Minimum mark on the gauge: see that it stands at " + text(fill.minimumMark()) + "."
                        : "Minimum mark on the gauge: not recorded; set it at the cold fill pressure and record it.",
                "Anyone who passes can see whether the loop has lost water.",
                CheckSources.BOILER_INSTRUCTIONS);
    }

    private static String hottest(@Nullable FillNote fill) {
        return fill == null || fill.hotPressure() == null
                ? "; none is recorded to compare with"
                : "; recorded: " + text(fill.hotPressure())
                        + (fill.hotTemperature() == null
                                ? ""
                                : " at " + fill.hotTemperature().textInBothSystems());
    }

    private static String text(@Nullable GaugePressure pressure) {
        return pressure == null ? RecordLines.NOT_RECORDED : pressure.textInBothSystems();
    }
}
