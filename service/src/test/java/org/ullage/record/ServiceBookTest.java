package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

class ServiceBookTest {

    @Test
    void comesBackFromJson() {
        for (ServiceBook book : List.of(Books.fullBook(), Books.leastBook())) {
            ServiceBook back = Books.read(Books.json(book), ServiceBook.class);
            assertThat(back).isEqualTo(book).hasSameHashCodeAs(book);
            assertThat(Books.json(back)).isEqualTo(Books.json(book));
        }
    }

    @Test
    void comesBackFromBytes() throws Exception {
        ObjectMapper json = new ObjectMapper();
        byte[] bytes = json.writerWithDefaultPrettyPrinter().writeValueAsBytes(Books.fullBook());
        assertThat(json.readValue(bytes, ServiceBook.class)).isEqualTo(Books.fullBook());
    }

    @Test
    void comesBackFromAStream() {
        assertThat(Books.serialised(Books.fullBook())).isEqualTo(Books.fullBook());
        ServiceBook unknown = Books.read(
                Books.json(Books.leastBook()).replaceFirst("\\{", "{\"x\":{\"y\":[1,null]},"), ServiceBook.class);
        assertThat(Books.serialised(unknown)).isEqualTo(unknown);
    }

    @Test
    void leavesOutWhatIsNotRecordedAndKeepsTheOrder() {
        assertThat(Books.json(Books.leastBook()))
                .isEqualTo("{\"schema\":\"ullage-record\",\"version\":1,\"commissioning\":{\"installation\":\"Shed\","
                        + "\"vessels\":[{\"id\":\"V1\"}],\"date\":\"2020-10-01\",\"by\":\"A. Fitter\"}}");
    }

    @Test
    void writesQuantitiesAsTextWithTheirUnit() {
        assertThat(Books.json(Books.fullBook()))
                .contains("\"nominal\":\"50.0 L\"")
                .contains("\"kind\":\"diaphragm\"")
                .contains("\"contentsBasis\":\"taken off\"")
                .contains("\"maximumTemperature\":\"70.0 degC\"")
                .contains("\"checkedFor\":\"65.0 kg\"")
                .contains("\"look\":\"yellow-brown\"")
                .contains("{\"quantity\":\"pH\",\"number\":8.2}")
                .contains("{\"quantity\":\"conductivity\",\"number\":420.0,\"unit\":\"uS/cm\"}")
                .contains("\"waterSideAtZero\":true");
    }

    @Test
    void readsEitherUnitSystem() {
        String psi = Books.json(Books.fullBook()).replace("\"3.0 bar\"", "\"30 psi\"");
        assertThat(Books.read(psi, ServiceBook.class).commissioning().reliefSetting())
                .isEqualTo(GaugePressure.psi(30));
    }

    @Test
    void keepsWhatItDoesNotKnow() {
        String json =
                "{\"schema\":\"ullage-record\",\"version\":1,\"later\":\"\",\"commissioning\":{\"installation\":\"Shed\","
                        + "\"vessels\":[{\"colour\":{\"paint\":[1,2.5,null,{\"a\":true}]},\"id\":\"V1\",\"charge\":{\"odd\":null}}],"
                        + "\"date\":\"2020-10-01\",\"by\":\"A\",\"zone\":[]}}";
        ServiceBook book = Books.read(json, ServiceBook.class);
        assertThat(book.unknownFields()).containsEntry("later", "");
        assertThat(book.commissioning().unknownFields()).containsEntry("zone", List.of());
        String written = Books.json(book);
        assertThat(written)
                .contains("\"later\":\"\"")
                .contains("\"colour\":{\"paint\":[1,2.5,null,{\"a\":true}]}")
                .contains("\"charge\":{\"odd\":null}")
                .contains("\"zone\":[]");
        assertThat(Books.read(written, ServiceBook.class)).isEqualTo(book);
    }

    @Test
    void keepsWhatItDoesNotKnowThroughChanges() {
        VesselNote vessel = Books.read("{\"id\":\"V1\",\"colour\":\"red\"}", VesselNote.class);
        VesselNote changed = vessel.toBuilder().nominal(Volume.litres(18)).build();
        assertThat(changed.unknownFields()).containsEntry("colour", "red");
        assertThat(vessel.nominal()).isNull();
    }

    @Test
    void cannotBeChangedFromOutside() {
        assertThatThrownBy(() -> Books.fullBook().visits().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Books.fullNote().vessels().clear()).isInstanceOf(UnsupportedOperationException.class);
        ServiceBook book =
                Books.read(Books.json(Books.leastBook()).replaceFirst("\\{", "{\"x\":{\"y\":[1]},"), ServiceBook.class);
        assertThatThrownBy(() -> book.unknownFields().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> ((List<?>) ((Map<?, ?>) book.unknownFields().get("x")).get("y")).clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void refusesANewerVersionBeforeAnythingElse() {
        String newer = Books.json(Books.leastBook())
                .replace("\"version\":1", "\"version\":2")
                .replace("\"commissioning\":{", "\"commissioning\":{\"date\":{\"from\":1},");
        assertThatThrownBy(() -> Books.read(newer, ServiceBook.class))
                .hasRootCauseInstanceOf(OutOfRangeException.class)
                .hasStackTraceContaining(
                        "version 2 is not allowed: it must be 1, the newest that this release can read")
                .hasStackTraceContaining("newer release");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"version\":0", "\"version\":-1", "\"other\":1"})
    void refusesAVersionThatIsNone(String version) {
        String json = Books.json(Books.leastBook()).replace("\"version\":1", version);
        assertThatThrownBy(() -> Books.read(json, ServiceBook.class)).hasStackTraceContaining("version");
    }

    @Test
    void refusesAnotherKindOfFile() {
        String json = Books.json(Books.leastBook()).replace("ullage-record", "ullage-sizing");
        assertThatThrownBy(() -> Books.read(json, ServiceBook.class))
                .hasStackTraceContaining("schema \"ullage-sizing\" is not allowed: it must be \"ullage-record\"");
    }

    @Test
    void bringsVisitsIntoOrder() {
        VisitRecord late = VisitRecord.of(Books.START.plusYears(2), "C").build();
        VisitRecord early = VisitRecord.of(Books.START.plusYears(1), "C").build();
        assertThat(Books.leastBook().withVisit(late).withVisit(early).visits()).containsExactly(early, late);
    }

    @Test
    void refusesAVisitBeforeTheCommissioning() {
        VisitRecord before = VisitRecord.of(Books.START.minusDays(1), "C").build();
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Books.leastBook().withVisit(before))
                .withMessageContaining("on or after the commissioning on 2020-10-01");
    }

    @Test
    void refusesAVesselThatIsNotThere() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Books.leastBook().withVisit(Books.visit(Books.START, Books.found("V-1", 1, 20))))
                .withMessageContaining("\"V-1\"")
                .withMessageContaining("one of \"V1\"");
    }

    @Test
    void aVesselIsCheckedOnceAVisitAndOnlyReplacedIfItIsThere() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> VisitRecord.of(Books.START, "C")
                        .charge(Books.found("V1", 1, 20))
                        .charge(Books.found("V1", 1.1, 20))
                        .build())
                .withMessageContaining("vessel of a visit \"V1\"");
        VisitRecord elsewhere = VisitRecord.of(Books.START, "C")
                .replacement(new Replacement("V9", Books.vessel("V3", 1, 20), "membrane torn", null, null))
                .build();
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Books.leastBook().withVisit(elsewhere))
                .withMessageContaining("\"V9\"");
    }

    @Test
    void followsReplacements() {
        assertThat(Books.fullBook().vesselsNow()).extracting(VesselNote::id).containsExactly("V1", "V3");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() ->
                        Books.fullBook().withVisit(Books.visit(Books.START.plusYears(3), Books.found("V2", 1, 20))));
    }

    @Test
    void aLoopMayHaveNeededNoWater() {
        VisitRecord dry =
                VisitRecord.of(Books.START, "C").makeUpWater(Volume.litres(0)).build();
        assertThat(dry.makeUpWater()).isEqualTo(Volume.litres(0));
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> VisitRecord.of(Books.START, "C")
                        .makeUpWater(Volume.litres(-1))
                        .build())
                .withMessageContaining("zero or more");
    }

    @Test
    void asksForWhatItCannotDoWithout() {
        VesselNote vessel = VesselNote.of("V1").build();
        assertThatExceptionOfType(MissingInputException.class)
                .isThrownBy(() ->
                        CommissioningNote.of("  ", Books.START, "A", vessel).build())
                .withMessageContaining("installation is missing");
        assertThatExceptionOfType(MissingInputException.class)
                .isThrownBy(
                        () -> CommissioningNote.of("x", Books.START, "", vessel).build())
                .withMessageContaining("by whom is missing");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> CommissioningNote.of("x", Books.START, "A", vessel)
                        .vessel(vessel)
                        .build())
                .withMessageContaining("\"V1\"");
        assertThatExceptionOfType(MissingInputException.class)
                .isThrownBy(
                        () -> ChargeCheck.of("V1").found(GaugePressure.bar(1)).build())
                .withMessageContaining("whether the water side was at zero");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> VesselNote.of("V1").nominal(Volume.litres(0)).build())
                .withMessageContaining("nominal volume");
        assertThatThrownBy(() -> Books.read(
                        "{\"installation\":\"x\",\"date\":\"2020-10-01\",\"by\":\"A\",\"vessels\":[]}",
                        CommissioningNote.class))
                .hasStackTraceContaining("vessel is missing");
    }

    @Test
    void saysWhatIsNotRecorded() {
        String text = Books.leastBook().text(UnitSystem.SI);
        assertThat(text)
                .contains("relief setting:           not recorded")
                .contains("place:                    not recorded");
        String full = Books.fullBook().text(UnitSystem.IP);
        assertThat(full)
                .contains("Vessel V1")
                .contains("charge set:               17.4 psi with the gas at 68 degF")
                .contains("Visit of 2021-10-01")
                .contains("pH 8.2, conductivity 420 uS/cm")
                .contains("Vessel V2 replaced")
                .contains("gas:                      nitrogen")
                .contains("gauge:                    gauge 17")
                .contains("filled to:                21.76 psi with the water at 59 degF")
                .contains("leak test at:             58.02 psi");
        assertThat(full.chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 127)))
                .isTrue();
    }
}
