package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.condition.FluidSample;
import org.ullage.condition.LoopTrait;
import org.ullage.condition.SampleValue;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

class PreSeasonChecklistTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;

    private static String text(ServiceBook book) {
        return String.join("\n", items(book));
    }

    private static List<String> items(ServiceBook book) {
        return PreSeasonChecklist.of(book, AIR, null).items().stream()
                .map(ChecklistItem::text)
                .toList();
    }

    private static ServiceBook with(VesselNote vessel) {
        return ServiceBook.of(
                CommissioningNote.of("Shed", Books.START, "A", vessel).build());
    }

    @Test
    void comparesWithTheLastCharge() {
        // (1.2 + 1.01325) bar x 293.15 K / 289.15 K - 1.01325 bar = 1.231 bar
        assertThat(text(Books.fullBook()))
                .contains(
                        "recorded on 2021-10-01: 1.2 bar (17.4 psi) with the gas at 16 degC (60.8 degF); at 20 degC that is 1.231 bar");
        // x 283.15 K: 1.154 bar
        assertThat(PreSeasonChecklist.of(Books.fullBook(), AIR, Temperature.celsius(10))
                        .items())
                .anySatisfy(item -> assertThat(item.text()).contains("as today that is 1.154 bar"));
    }

    @Test
    void followsTheValve() {
        assertThat(text(with(Books.vessel("V1", 1, 20)))).contains("close its lockable valve");
        assertThat(text(with(Books.vessel("V1", 1, 20).toBuilder()
                        .lockableValve(false)
                        .build())))
                .contains("no lockable valve: shut the valves of the loop")
                .doesNotContain("close its lockable valve");
        assertThat(text(with(Books.vessel("V1", 1, 20).toBuilder()
                        .lockableValve(null)
                        .build())))
                .contains("look whether a valve that can be locked open");
    }

    @Test
    void followsTheFluid() {
        assertThat(text(Books.fullBook())).contains("measure concentration, freezing point, pH and inhibitor");
        CommissioningNote water = Books.fullNote().toBuilder()
                .loop(new LoopNote(null, null, "water", null, null, null))
                .build();
        assertThat(text(ServiceBook.of(water)))
                .contains("Fluid (water): let a sample stand")
                .doesNotContain("inhibitor");
        assertThat(text(ServiceBook.of(water)
                        .withVisit(VisitRecord.of(Books.START, "C")
                                .sample(Books.sample(8))
                                .build())))
                .contains("inhibitor");
        SampleNote plain = SampleNote.of(FluidSample.of(LoopTrait.SALINE).with(SampleValue.ph(8)));
        assertThat(text(ServiceBook.of(water)
                        .withVisit(
                                VisitRecord.of(Books.START, "C").sample(plain).build())))
                .contains("Fluid (water): let a sample stand");
        assertThat(text(Books.leastBook())).contains("find out what the loop is filled with");
    }

    @Test
    void asksForWhatIsNotRecorded() {
        assertThat(text(Books.leastBook()))
                .contains("read the charge and the temperature of the shell, set the charge and record all three")
                .contains("Minimum mark on the gauge: not recorded")
                .contains("The load it was checked for is not recorded")
                .contains("Its setting: not recorded")
                .contains("note which gauge is used")
                .contains("fill pressure, which is not recorded")
                .contains("note pressure and temperature; none is recorded to compare with.");
        assertThat(text(Books.fullBook()))
                .contains("see that it stands at 1.4 bar")
                .contains("fill pressure, 1.5 bar (21.76 psi) recorded")
                .contains("note pressure and temperature; recorded: 2.3 bar (33.36 psi) at 70 degC (158 degF).")
                .contains("checked for 65 kg (143.3 lb)")
                .contains("gauge 17");
    }

    @Test
    void aTankWithoutMembraneHasNoCharge() {
        String plain = text(with(VesselNote.of("T").kind(VesselKind.PLAIN_STEEL).build()));
        assertThat(plain).contains("gauge glass").doesNotContain("gas valve");
        String open = text(with(VesselNote.of("T").kind(VesselKind.OPEN).build()));
        assertThat(open).contains("overflow").doesNotContain("gas valve").doesNotContain("tap it");
    }

    @Test
    void everyItemSaysWhyAndWhereFrom() {
        PreSeasonChecklist list = PreSeasonChecklist.of(Books.fullBook(), AIR, null);
        assertThat(list.items()).allSatisfy(item -> {
            assertThat(item.why()).isNotBlank();
            assertThat(item.source().document()).isNotBlank();
        });
        assertThat(list.items()).anySatisfy(item -> assertThat(item.text()).contains("; tap it at both ends."));
        assertThat(list.items()).anySatisfy(item -> assertThat(item.why()).contains("The recorded one ends at 4 bar"));
        assertThat(list.text().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(list.text())
                .startsWith("Before the season: Mill House\n")
                .contains("[ ] Vessel V1")
                .contains("[ ] Vessel V3")
                .contains("never oxygen");
        assertThat(list.items().get(0).text()).contains("Let the loop cool");
        assertThat(Books.serialised(list)).isEqualTo(list);
    }
}
