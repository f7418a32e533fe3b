package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;

/** Every cited row of pipe dimensions comes out of the standard's table, and the names by which a standard is found. */
class PipeStandardTest {

    static Stream<Map<String, String>> citedRows() {
        return CitedTable.read(Loop.class, "expected-pipes.tsv").rows().stream();
    }

    @ParameterizedTest
    @MethodSource("citedRows")
    void everyCitedRow(Map<String, String> row) {
        PipeSize size = PipeStandard.named(row.get("standard")).size(row.get("size"));
        assertThat(size.outside()).isEqualTo(Length.parse(row.get("outside") + " " + row.get("unit")));
        assertThat(size.wall()).isEqualTo(Length.parse(row.get("wall") + " " + row.get("unit")));
        double litres = Double.parseDouble(row.get("litres_per_metre"));
        double gallons = Double.parseDouble(row.get("gallons_per_foot"));
        assertThat(size.pipe().litresPerMetre()).isCloseTo(litres, within(litres * 1e-3));
        // five decimals in print
        assertThat(size.pipe().gallonsPerFoot()).isCloseTo(gallons, within(0.51e-5));
        assertThat(size.source().provenance()).isEqualTo(provenance(row.get("mark")));
    }

    /** A row that is partly remembered counts as remembered. */
    private static Provenance provenance(String mark) {
        if (mark.startsWith("d")) {
            return Provenance.COMMON_PRACTICE;
        }
        return mark.matches("(.*[^a-z])?b .*") ? Provenance.FROM_MEMORY : Provenance.PUBLISHED;
    }

    @ParameterizedTest
    @EnumSource
    void everyStandardIsFoundByItsNames(PipeStandard standard) {
        assertThat(PipeStandard.named(standard.title())).isEqualTo(standard);
        assertThat(standard.otherNames())
                .allSatisfy(name -> assertThat(PipeStandard.named(name)).isEqualTo(standard));
    }

    @Test
    void otherNamesCanBeAskedFor() {
        assertThat(PipeStandard.ASTM_F876.otherNames()).contains("PEX", "PEX CTS");
        assertThat(PipeStandard.EN_1057.otherNames()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everySizeIsFoundByItsOwnNameAndHasABoreAndASource(PipeStandard standard) {
        assertThat(standard.sizes()).hasSizeGreaterThan(5).allSatisfy(size -> {
            assertThat(standard.size(size.size())).isEqualTo(size);
            assertThat(size.bore().si()).isPositive();
            assertThat(size.source().document()).isNotBlank();
            assertThat(size.pipe().material()).isEqualTo(standard.material());
        });
        assertThat(standard.note()).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource({
        "astm b88 L, ASTM_B88_L",
        "ASTM B88-L, ASTM_B88_L",
        "copper B88 L, ASTM_B88_L",
        "Copper type L tube, ASTM_B88_L",
        "ASME B36.10M Schedule 40, ASME_B36_10_SCH_40",
        "steel pipe Sch. 40x, ",
        "ANSI B36.10 sch40, ASME_B36_10_SCH_40",
        "steel Schedule 80, ASME_B36_10_SCH_80",
        "DIN EN 1057, EN_1057",
        "BS EN 1057, EN_1057",
        "EN 10255 medium series, EN_10255_MEDIUM",
        "PEX, ASTM_F876",
        "ASTM F876 SDR 9, ASTM_F876",
        "EN ISO 15875-2 PE-X S 3.2, EN_ISO_15875_S3_2",
        "EN ISO 22391-2 PE-RT series S 5, EN_ISO_15875_S5",
        "DIN 16893 SDR 11, DIN_16893_SDR_11",
        "CPVC Schedule 80, ASTM_F441_SCH_80",
        "ASTM D2846, ASTM_D2846",
    })
    void spellingsOfNames(String name, PipeStandard standard) {
        if (standard == null) {
            assertThatThrownBy(() -> PipeStandard.named(name)).isInstanceOf(OutOfRangeException.class);
        } else {
            assertThat(PipeStandard.named(name)).isEqualTo(standard);
        }
    }

    /** Schedule 40 is a size of steel and of CPVC; a name that fits both fits none. */
    @ParameterizedTest
    @CsvSource({"Schedule 40", "BS 1387 medium", "copper", "''", "EN 10255"})
    void anUnknownNameListsTheStandards(String name) {
        assertThatThrownBy(() -> PipeStandard.named(name))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(
                        "pipe standard \"" + name + "\" is not allowed: it must be one of ASME B36.10 Sch 40, ")
                .hasMessageContaining("EN 1057, EN 10255 medium, ")
                .hasMessageEndingWith("or describe the pipe by outside diameter and wall with Pipe.ofWall");
    }

    @Test
    void materials() {
        assertThat(PipeStandard.ASME_B36_10_XS.material()).isEqualTo(PipeMaterial.STEEL);
        assertThat(PipeStandard.EN_10255_HEAVY.material()).isEqualTo(PipeMaterial.STEEL);
        assertThat(PipeStandard.ASTM_B88_M.material()).isEqualTo(PipeMaterial.COPPER);
        assertThat(PipeStandard.EN_1057.material()).isEqualTo(PipeMaterial.COPPER);
        // plastic out-expands the water in it, so a credit for it would be on the unsafe side
        assertThat(PipeStandard.ASTM_F876.material()).isEqualTo(PipeMaterial.RIGID);
        assertThat(PipeStandard.EN_ISO_15875_S5.material()).isEqualTo(PipeMaterial.RIGID);
    }
}
