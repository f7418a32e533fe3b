package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.ullage.examples.Program;
import org.ullage.fluids.Fluids;
import org.ullage.method.Sizing;
import org.ullage.quantity.Volume;
import org.ullage.record.SizingRecord;

class JsonOptionTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Test
    void holdsJobAndAnswerOfEveryLineOrItsError() throws Exception {
        Program run = Program.size(
                Program.HEADER + "\n"
                        + "a,ashrae,diaphragm,propylene glycol 30 vol%,1000 L,10 degC,80 degC,steel,1 bar,2.5 bar,,,,\n"
                        + "b,ashrae,diaphragm,water,ten,10 degC,80 degC,steel,1 bar,2.5 bar,,,,\n",
                "--json");
        assertThat(run.status()).isEqualTo(1);
        JsonNode array = MAPPER.readTree(run.out());
        assertThat(array).hasSize(2);
        assertThat(array.get(0).get("id").asText()).isEqualTo("a");
        assertThat(array.get(1).get("error").asText()).contains("contents");
        SizingRecord record = MAPPER.treeToValue(array.get(0).get("sizing"), SizingRecord.class);
        Sizing again = record.job().sizingMethod().size(record.job().job(Fluids::parse));
        assertThat(again.requiredVolume())
                .isEqualTo(Volume.parse(array.get(0)
                        .get("sizing")
                        .get("answer")
                        .get("requiredVolume")
                        .asText()));
    }

    @Test
    void anEmptyFileIsAnEmptyArray() throws Exception {
        assertThat(MAPPER.readTree(Program.size(Program.HEADER + "\n", "--json").out()))
                .isEmpty();
    }

    @Test
    void stepsHaveNoPlaceInIt() {
        Program both = Program.size(Program.HEADER + "\n", "--json", "--workings");
        assertThat(both.status()).isEqualTo(2);
        assertThat(both.err()).contains("do not go together");
    }
}
