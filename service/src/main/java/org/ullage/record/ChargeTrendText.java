package org.ullage.record;

import org.ullage.quantity.UnitSystem;

/** The trend of a charge on paper. */
final class ChargeTrendText {

    private ChargeTrendText() {}

    static String of(ChargeTrend trend, UnitSystem system) {
        StringBuilder text = new StringBuilder("Charge of vessel " + PlainText.shortened(trend.vessel()) + "\n");
        for (ChargePoint point : trend.points()) {
            text.append("  ")
                    .append(point.text(system))
                    .append("; at 20 degC ")
                    .append(point.corrected().gauge(trend.ambient()).text(system, 3))
                    .append('\n');
        }
        trend.leftOut().forEach(leftOut -> text.append("  ").append(leftOut).append('\n'));
        ChargeLoss loss = trend.loss();
        text.append("  ").append(loss.text(system)).append('\n');
        if (loss instanceof ChargeLoss.Estimated estimated) {
            estimated
                    .outliers()
                    .forEach(point -> text.append("  far from the line, look for the cause: ")
                            .append(point.text(system))
                            .append(' ')
                            .append(CommonSlope.OUTLIER_RULE)
                            .append('\n'));
        }
        return text.toString();
    }
}
