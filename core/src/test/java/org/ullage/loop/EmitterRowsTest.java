package org.ullage.loop;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.provenance.CitedTable;
import org.ullage.quantity.Area;
import org.ullage.quantity.Length;
import org.ullage.quantity.Power;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** Every cited row on the water in emitters, boilers and systems is met by the rule or the geometry that stands for it. */
class EmitterRowsTest {

    private static final Power KILOWATT = Power.kilowatts(1);
    private static final Power TEN_THOUSAND_BTU = Power.btuPerHour(10_000);
    private static final Temperature WATER_180_F = Temperature.fahrenheit(180);

    private static final Pattern FLOOR = Pattern.compile("floor heating pipe (\\d+x\\d) at (\\d+) mm spacing.*");
    private static final Pattern RADIANT = Pattern.compile("radiant floor (\\S+) in PEX .* at (\\d+) in spacing.*");
    private static final Pattern FIN_TUBE =
            Pattern.compile("fin-tube baseboard element on (\\S+) in (copper L|steel Sch 40) tube, per (ft|m) .*");
    private static final Pattern WHOLE = Pattern.compile("whole system per (kW|10,000 Btu/h) of boiler output: (.*)");

    private static final Map<String, EmitterType> KINDS = Map.of(
            "perimeter heating / convectors", EmitterType.CONVECTORS,
            "air handling units, fan coils and other ventilation coils", EmitterType.AIR_COILS,
            "steel panel radiators", EmitterType.STEEL_PANEL_RADIATORS,
            "cast iron radiators", EmitterType.CAST_IRON_RADIATORS,
            "long distributed mains (\"distant\" systems)", EmitterType.LONG_MAINS,
            "underfloor heating", EmitterType.UNDERFLOOR,
            "small / microbore domestic systems, any emitter", EmitterType.SMALL_DOMESTIC);

    private static final Map<String, Supplier<ContentsItem>> RULES = Map.ofEntries(
            entry("domestic system: per single-panel radiator (double = two), pipes included", EmitterRowsTest::panel),
            entry("domestic system: per radiator panel, pipes included", EmitterRowsTest::panel),
            entry("thermal store in a domestic system adds up to", () -> PieceRule.DOMESTIC_THERMAL_STORE.item(1)),
            entry("cast iron / steel ribbed radiator, per rib", () -> PieceRule.RADIATOR_RIB.item(1)),
            entry("typical single steel panel radiator, whole", () -> PieceRule.STEEL_PANEL_RADIATOR.item(1)),
            entry("per sq ft EDR: column-type cast iron radiator", () -> Radiator.COLUMN_RADIATOR.item(1)),
            entry("per sq ft EDR: large-tube cast iron radiator", () -> Radiator.LARGE_TUBE_RADIATOR.item(1)),
            entry(
                    "per sq ft EDR: slender-tube cast iron radiator; also cast iron radiant panel and cast iron baseboard",
                    () -> Radiator.SLENDER_TUBE_RADIATOR.item(1)),
            entry("per sq ft EDR: cast iron convector", () -> Radiator.CAST_IRON_CONVECTOR.item(1)),
            entry("per sq ft EDR: non-ferrous (copper) convector", () -> Radiator.COPPER_CONVECTOR.item(1)),
            entry(
                    "per kW at 170 Btu/h per ft2 (180 F average water): column-type cast iron radiator",
                    () -> Radiator.COLUMN_RADIATOR.item(KILOWATT, WATER_180_F)),
            entry(
                    "per kW at 170 Btu/h per ft2 (180 F average water): cast iron convector",
                    () -> Radiator.CAST_IRON_CONVECTOR.item(KILOWATT, WATER_180_F)),
            entry(
                    "per kW at 170 Btu/h per ft2 (180 F average water): non-ferrous (copper) convector",
                    () -> Radiator.COPPER_CONVECTOR.item(KILOWATT, WATER_180_F)),
            entry(
                    "residential / light commercial cast iron boiler, whole",
                    () -> PieceRule.RESIDENTIAL_CAST_IRON_BOILER.item(1)),
            entry(
                    "boiler water content: wall-hung condensing, low mass",
                    () -> PowerRule.WALL_HUNG_CONDENSING_BOILER.item(KILOWATT)),
            entry(
                    "boiler water content: copper fin-tube, low mass",
                    () -> PowerRule.COPPER_FIN_TUBE_BOILER.item(KILOWATT)),
            entry(
                    "boiler water content: cast iron sectional",
                    () -> PowerRule.CAST_IRON_SECTIONAL_BOILER.item(KILOWATT)),
            entry(
                    "boiler water content: steel three-pass / fire-tube hot water",
                    () -> PowerRule.STEEL_FIRE_TUBE_BOILER.item(KILOWATT)),
            entry(
                    "buffer for automatically fed solid-fuel boiler",
                    () -> PowerRule.BUFFER_AUTOMATIC_SOLID_FUEL.item(KILOWATT)),
            entry("buffer for hand-fed solid-fuel boiler", () -> PowerRule.BUFFER_HAND_FED_SOLID_FUEL.item(KILOWATT)),
            entry("solar storage tank per ft2 of collector", () -> AreaRule.SOLAR_STORAGE.item(Area.squareFeet(1))));

    private static ContentsItem panel() {
        return PieceRule.PANEL_WITH_PIPES.item(1);
    }

    static Stream<Map<String, String>> rows() {
        // the open tank of 1907 is no part of a closed loop
        return CitedTable.read(Loop.class, "expected-emitters.tsv").rows().stream()
                .filter(row -> !row.get("item").startsWith("1907 rule"));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyCitedRow(Map<String, String> row) {
        VolumeRange range = found(row.get("item"));
        String unit = row.get("unit");
        double cited = Double.parseDouble(row.get("value"));
        // half of the last digit in print, and no more than its lost zeros explain
        double halfDigit = new BigDecimal(row.get("value")).ulp().doubleValue() / 2;
        double tolerance = Math.min(halfDigit * 1.001, cited * 0.015);
        if (unit.endsWith("(low end)")) {
            assertThat(in(unit, range.low())).isCloseTo(cited, within(tolerance));
        } else if (unit.endsWith("(high end)")) {
            assertThat(in(unit, range.high())).isCloseTo(cited, within(tolerance));
        } else if (unit.equals("L/panel")) {
            assertThat(cited).isIn(in(unit, range.low()), in(unit, range.high()));
        } else {
            assertThat(in(unit, range.typical())).isCloseTo(cited, within(tolerance));
        }
    }

    private static double in(String unit, Volume volume) {
        return volume.in(unit.contains("gal") ? Units.US_GALLON : Units.LITRE);
    }

    private static VolumeRange found(String item) {
        Supplier<ContentsItem> rule = RULES.get(item);
        return rule == null ? VolumeRange.exactly(computed(item)) : rule.get().volume();
    }

    private static Volume computed(String item) {
        Matcher whole = WHOLE.matcher(item);
        if (whole.matches()) {
            Power output = whole.group(1).equals("kW") ? KILOWATT : TEN_THOUSAND_BTU;
            return QuickEstimate.of(output, KINDS.get(whole.group(2)))
                    .contents()
                    .typical();
        }
        Matcher finTube = FIN_TUBE.matcher(item);
        if (finTube.matches()) {
            Length length = finTube.group(3).equals("m") ? Length.metres(1) : Length.feet(1);
            return PipeStandard.named(finTube.group(2)).size(finTube.group(1)).contents(length);
        }
        return inFloor(item);
    }

    private static Volume inFloor(String item) {
        Matcher metric = FLOOR.matcher(item);
        if (metric.matches()) {
            return floor(
                    PipeStandard.METRIC_PLASTIC.size(metric.group(1)),
                    Length.parse(metric.group(2) + " mm"),
                    Area.squareMetres(1));
        }
        Matcher radiant = RADIANT.matcher(item);
        if (radiant.matches()) {
            return floor(
                    PipeStandard.ASTM_F876.size(radiant.group(1)),
                    Length.parse(radiant.group(2) + " in"),
                    Area.squareFeet(1));
        }
        assertThat(item).isEqualTo("floor heating 16x2 at 150 mm, 60 W/m2, loops only");
        double litres = EmitterType.UNDERFLOOR.rules().get(1).litresPerKilowatt();
        Volume loops = floor(
                PipeStandard.METRIC_PLASTIC.size("16x2"), Length.millimetres(150), Area.squareMetres(1000.0 / 60));
        assertThat(loops.in(Units.LITRE)).isCloseTo(litres, within(0.05));
        return Volume.litres(litres);
    }

    private static Volume floor(PipeSize size, Length spacing, Area area) {
        return TakeOff.start().floor(size.pipe(), spacing, area).contents().typical();
    }
}
