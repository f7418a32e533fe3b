package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/** A mistake in a file is told with line and place, in the words of this library. */
class RecordErrorsTest {

    private static final String FILE = """
            {
              "installation": "Shed",
              "date": "2020-10-01",
              "by": "A",
              "reliefSetting": "3 bar",
              "fillWater": {"readings": [{"quantity": "pH", "number": 8}]},
              "vessels": [
                {
                  "id": "V1",
                  "kind": "bladder",
                  "nominal": "50 L",
                  "lockableValve": true
                }
              ]
            }
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"50 L\"|\"50 bar\"|line 11, vessels[0].nominal: \"50 bar\" cannot be read as volume: the unit \"bar\" is not known",
                "\"50 L\"|\"fifty\"|line 11, vessels[0].nominal: \"fifty\" cannot be read as volume: it does not start with a number",
                "\"50 L\"|\"-5 L\"|line 13, vessels[0]: nominal volume -5 L (-1.321 gal) is not allowed: it must be above zero",
                "\"50 L\"|50|line 11, vessels[0].nominal: Cannot construct instance of `org.ullage.quantity.Volume`",
                "\"2020-10-01\"|\"01/10/2020\"|line 3, date: date \"01/10/2020\" is not allowed: it must be a day of the calendar",
                "\"2020-10-01\"|\"2021-02-29\"|line 3, date: date \"2021-02-29\" is not allowed",
                "\"3 bar\"|\"0 bar\"|line 15, : relief setting 0 bar (0 psi) is not allowed: it must be above zero",
                "\"number\": 8|\"number\": 8, \"unit\": \"mg/L\"|line 6, fillWater.readings[0]: unit of pH mg/L is not allowed: it must be left out",
                "\"3 bar\"|\"3 bar abs\"|line 5, reliefSetting: \"3 bar abs\" cannot be read as gauge pressure: it is absolute",
                "\"number\": 8|\"number\": 81|line 6, fillWater.readings[0]: pH 81.0 is not allowed",
                "\"bladder\"|\"bag\"|line 10, vessels[0].kind: ",
                "\"id\": \"V1\",|  |line 13, vessels[0]: name of the vessel is missing: a vessel needs it",
                "true|\"perhaps\"|line 12, vessels[0].lockableValve: ",
            })
    void tellsLinePlaceAndReason(String right, String wrong, String told) {
        String file = FILE.replace(right, wrong == null ? "" : wrong);
        JsonMappingException refused = catchThrowableOfType(
                JsonMappingException.class, () -> new ObjectMapper().readValue(file, CommissioningNote.class));
        assertThat(message(refused)).startsWith(told);
        // Jackson's own message has the reason too.
        assertThat(refused.getMessage())
                .contains(refused.getCause() == null ? "" : refused.getCause().getMessage());
    }

    @Test
    void whatHasASizeIsAboveZero() {
        List.<ThrowingCallable>of(
                        () -> VesselNote.of("V1").rating(GaugePressure.bar(0)).build(),
                        () -> new GaugeNote(GaugePressure.bar(0), null, null),
                        () -> new SizingNote("en-12828", Volume.litres(0)))
                .forEach(note -> assertThatThrownBy(note)
                        .isInstanceOf(OutOfRangeException.class)
                        .hasMessageContaining("above zero"));
        assertThatThrownBy(() -> new FillWaterNote(Volume.litres(-1), null, List.of(), null))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("zero or more");
    }

    /** What a program prints: line, place in the file and reason. */
    private static String message(JsonMappingException refused) {
        StringBuilder place = new StringBuilder();
        for (JsonMappingException.Reference step : refused.getPath()) {
            if (step.getFieldName() == null) {
                place.append('[').append(step.getIndex()).append(']');
            } else {
                place.append(place.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        Throwable cause = refused.getCause();
        String reason = cause instanceof IllegalArgumentException ? cause.getMessage() : refused.getOriginalMessage();
        return "line " + refused.getLocation().getLineNr() + ", " + place + ": " + reason;
    }
}
