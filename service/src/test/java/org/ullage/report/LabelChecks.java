package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What must be true of every drawing. */
final class LabelChecks {

    private LabelChecks() {}

    /** In both widths. */
    static void check(Chart chart) {
        for (ChartWidth width : ChartWidth.values()) {
            String svg = chart.svg(width);
            assertThat(chart.svg(width)).isEqualTo(svg);
            assertThat(svg).matches("[\\n -~]+");
            check(Drawn.parse(svg), width);
        }
    }

    private static void check(Document svg, ChartWidth width) {
        Element root = svg.getDocumentElement();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(Drawn.elements(svg, "title")).hasSize(1);
        assertThat(Drawn.elements(svg, "desc")).hasSize(1);
        assertThat(Drawn.number(root, "width")).isEqualTo(width.pixels());
        double height = Drawn.number(root, "height");
        List<Drawn.Label> labels = Drawn.labels(svg);
        assertThat(labels)
                .allSatisfy(label -> assertThat(label.isInside(width.pixels(), height))
                        .as("%s inside %s x %s", label, width.pixels(), height)
                        .isTrue());
        for (int i = 0; i < labels.size(); i++) {
            for (int j = i + 1; j < labels.size(); j++) {
                Drawn.Label one = labels.get(i);
                Drawn.Label other = labels.get(j);
                assertThat(one.overlaps(other)).as("%s over %s", one, other).isFalse();
            }
        }
    }
}
