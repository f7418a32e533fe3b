package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.w3c.dom.Element;

class BarChartTest {

    private static final BarChart VOLUMES = BarChart.titled("Required volume")
            .axis("required volume", "L")
            .marks("smallest")
            .ranges("95 % of samples")
            .alarms("too small")
            .bar(Bar.of("one", 40).markedAt(50).noted("short").alarming())
            .bar(Bar.of("other", 80).within(70, 95))
            .build();

    @Test
    void lengthsAreInProportion() {
        List<Double> widths = Drawn.elements(Drawn.parse(VOLUMES.svg()), "rect").stream()
                .filter(bar -> !bar.getAttribute("fill").equals(Svg.PAPER))
                .map(bar -> Drawn.number(bar, "width"))
                .toList();
        // the first is the sample of the legend
        assertThat(widths).hasSize(3);
        assertThat(widths.get(2)).isCloseTo(2 * widths.get(1), offset(0.3));
    }

    @Test
    void everythingIsNamed() {
        LabelChecks.check(VOLUMES);
        assertThat(Drawn.elements(Drawn.parse(VOLUMES.svg()), "text"))
                .extracting(Element::getTextContent)
                .contains("one", "40 L, short", "other", "80 L", "smallest", "95 % of samples", "too small");
        assertThat(VOLUMES.description())
                .isEqualTo("required volume, L: one 40 L, short, smallest 50 L, too small; other 80 L,"
                        + " 95 % of samples 70 L to 95 L.");
    }

    @Test
    void withoutBarsItSaysSo() {
        BarChart empty = BarChart.titled("Nothing").axis("volume", "L").build();
        LabelChecks.check(empty);
        assertThat(Drawn.elements(Drawn.parse(empty.svg()), "text"))
                .extracting(Element::getTextContent)
                .contains("No data");
        assertThat(empty.description()).isEqualTo("volume, L: no data.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e16})
    void whatCannotBeDrawnIsRefused(double number) {
        Bar bar = Bar.of("one", 1);
        assertThatThrownBy(() -> Bar.of("one", number)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> bar.markedAt(number)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> bar.within(0, number)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> bar.within(number, 1)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void whatIsMissingOrCrossedIsRefused() {
        assertThatThrownBy(() -> BarChart.titled("t").build()).isInstanceOf(MissingInputException.class);
        assertThatThrownBy(() -> Bar.of("one", 1).within(2, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Bar("one", 1, "", null, 0.5, null, false)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new BarChart("t", Axis.dates("d"), List.of(), "", "", ""))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void survivesAStream() throws Exception {
        assertThat(Copies.of(VOLUMES)).isEqualTo(VOLUMES);
    }
}
