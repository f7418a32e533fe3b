package org.ullage.examples.demo;

import java.util.List;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.published.Methods;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/** The same job put to the methods that a heating loop most often meets. */
record ComparisonSection(SizingJob job) implements Section {

    /** One of each school; the program's list of methods has the rest. */
    static final List<Method> METHODS =
            List.of(Methods.ASHRAE, Methods.ASME_IV, Methods.EN_12828, Methods.RACCOLTA_R, Methods.MASS_BALANCE);

    private static final int DIGITS = 3;
    private static final int NAME_WIDTH = 14;

    @Override
    public void print(Page page) {
        page.heading("The same job by other methods");
        row(page, List.of("method", "required", "", "to accept", "cold, gauge", "final, gauge"));
        METHODS.forEach(method -> answer(page, method));
        page.line("");
        page.paragraph("They differ by their conventions. The one that is easiest to overlook is which temperature each"
                + " counts up to:");
        METHODS.forEach(method -> page.bullet(method.name() + ": " + method.hotBasis() + ". " + method.source()));
    }

    private void answer(Page page, Method method) {
        try {
            Sizing sizing = method.size(job);
            row(
                    page,
                    List.of(
                            method.name(),
                            sizing.requiredVolume().text(Units.LITRE, DIGITS),
                            sizing.requiredVolume().text(Units.US_GALLON, DIGITS),
                            sizing.acceptanceVolume().text(Units.LITRE, DIGITS),
                            sizing.coldPressure().text(Units.BAR, DIGITS),
                            sizing.finalPressure().text(Units.BAR, DIGITS)));
        } catch (OutOfRangeException | MissingInputException e) {
            page.row(List.of(method.name(), "refused: " + e.getMessage()), NAME_WIDTH);
        }
    }

    private static void row(Page page, List<String> cells) {
        page.row(cells, NAME_WIDTH, 12, 12, 14, 14);
    }
}
