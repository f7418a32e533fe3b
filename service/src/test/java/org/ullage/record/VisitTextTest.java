package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.condition.FluidSample;
import org.ullage.condition.SampleValue;
import org.ullage.quantity.UnitSystem;

class VisitTextTest {

    private static String text(VisitRecord visit) {
        return VisitText.of(visit, UnitSystem.SI);
    }

    @Test
    void whatWasRecordedIsOnPaper() {
        assertThat(text(Books.fullVisit()))
                .doesNotContain(RecordLines.NOT_RECORDED)
                .contains("cold on arrival:          1.4 bar with the water at 18 degC")
                .contains("Charge of vessel V1\n  water side at zero:       yes")
                .contains("gas added:                nitrogen")
                .contains("gauge:                    gauge 17")
                .contains("relief valve discharged:  no")
                .contains("kind of loop:             inhibited glycol, solar loop")
                .contains("look:                     yellow-brown")
                .contains("smell:                    none")
                .contains("Vessel V2 replaced\n  reason:                   membrane torn")
                .contains("Vessel V3\n  kind:                     diaphragm");
    }

    @Test
    void whatWasNotRecordedIsAskedFor() {
        String text = text(VisitRecord.of(Books.START, "C. Service").build());
        assertThat(text.lines().filter(line -> line.endsWith(RecordLines.NOT_RECORDED)))
                .extracting(line -> line.substring(0, line.indexOf(':')).strip())
                .contains("cold on arrival", "relief valve discharged", "kind of loop", "look", "smell", "remarks");
    }

    @Test
    void aSampleThatWasOnlyMeasuredSaysSo() {
        SampleNote measured = SampleNote.of(FluidSample.of().with(SampleValue.ph(8)));
        assertThat(text(VisitRecord.of(Books.START, "C").sample(measured).build()))
                .contains("measured in the fluid:    pH 8")
                .contains("kind of loop:             not recorded")
                .contains("look:                     not recorded")
                .contains("smell:                    not recorded");
    }

    @Test
    void everyCheckAndReplacementHasItsPart() {
        VisitRecord visit = VisitRecord.of(Books.START, "C")
                .charge(Books.found("V1", 1, 20))
                .charge(Books.found("V2", 1.1, 20))
                .build();
        assertThat(List.of("Charge of vessel V1", "Charge of vessel V2"))
                .allSatisfy(title -> assertThat(text(visit)).contains(title));
    }
}
