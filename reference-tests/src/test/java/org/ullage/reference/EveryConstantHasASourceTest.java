package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No number in core or fluids that is not plain arithmetic stands without its source; nor does a table in a file. */
class EveryConstantHasASourceTest {

    private static final List<Path> MODULES =
            List.of(Path.of("..", "core"), Path.of("..", "fluids"), Path.of("..", "service"));

    /** Describes the form of a file and holds no data; JSON has no comments for a header. */
    private static final String SCHEMA_ENDING = ".schema.json";

    /** Numbers about text or plain geometry, not about physics, each with the reason. */
    private static final Map<String, String> NOT_ABOUT_PHYSICS = Map.ofEntries(
            Map.entry("BranchAndBound.MOST_VISITED", "bounds a search"),
            Map.entry("OperatingChart.STEPS", "points of a drawing"),
            Map.entry("Oversize.PERCENT", "arithmetic: a hundred percent are one"),
            Map.entry("SizingBatch.NO_VOLUME", "marks a row, and no volume is negative"),
            Map.entry("HeatColour.HEX", "base of the digits of a colour"),
            Map.entry("HeatColour.TURN", "where white is easier to read than black, by a test"),
            Map.entry("HeatMapDrawing.LEAST_LETTERS", "room on a drawing"),
            Map.entry("HeatMapDrawing.MOST_OF_WIDTH", "room on a drawing"),
            Map.entry("DiagnosisReport.SHOWN", "lines of a table"),
            Map.entry("SwingModel.ROUNDS", "rounds of an iteration"),
            Map.entry("RankedHypothesis.ALMOST_NOTHING", "how a probability is printed"),
            Map.entry("RankedHypothesis.ALMOST_ALL", "how a probability is printed"),
            Map.entry("NextStep.BINS", "coarseness of a comparison"),
            Map.entry("GasPrior.POINTS", "points of a grid"),
            Map.entry("Densities.UNIFORM", "a uniform distribution"),
            Map.entry("BracketedRoot.ABSOLUTE_ACCURACY", "accuracy of a solver"),
            Map.entry("BracketedRoot.MOST_STEPS", "bounds a solver"),
            Map.entry("BracketedRoot.ORDER", "choice of a solver"),
            Map.entry("BracketedRoot.RELATIVE_ACCURACY", "accuracy of a solver"),
            Map.entry("Celsius.SLACK", "rounding of a conversion"),
            Map.entry("CurveLimits.POINTS", "points a search looks at"),
            Map.entry("ChartWidth.NARROW_PIXELS", "layout of a drawing"),
            Map.entry("ChartWidth.WIDE_PIXELS", "layout of a drawing"),
            Map.entry("Correlation.ROUNDING", "rounding of an eigenvalue"),
            Map.entry("CommonSlope.ROUNDING", "rounding of a residual"),
            Map.entry("DensityChecks.NEIGHBOURS", "points a check looks at"),
            Map.entry("DensitySurface.LEAST_OVERLAP", "choice of supporting columns"),
            Map.entry("DensitySurface.MOST_SUPPORT", "choice of supporting columns"),
            Map.entry("DensitySurface.SAME_KNOT", "rows that count as one"),
            Map.entry("Digits.PLAIN_FROM", "where printing turns scientific"),
            Map.entry("Digits.PLAIN_TO", "where printing turns scientific"),
            Map.entry("Extent.SAME", "numbers that count as one"),
            Map.entry("Figures.LARGEST", "what an axis can label"),
            Map.entry("Figures.LAST_YEAR", "what an axis can label"),
            Map.entry("Draws.LENGTH", "bounds the memory of a block"),
            Map.entry("FillPlan.POINTS", "points a search looks at"),
            Map.entry("FirstOrderShares.STRATA", "strata of an input that are looked at"),
            Map.entry("FluidSeries.MOST_INTERVALS", "bounds the memory of a series"),
            Map.entry("GasLaw.ROUNDING", "rounding of a pressure"),
            Map.entry("HandPosition.HALF_TURN", "degrees of a half turn"),
            Map.entry("HangerSpacing.LONGEST_ECHO", "characters to print"),
            Map.entry("LiquidDerivatives.HALF_KELVINS", "width of a difference"),
            Map.entry("LiquidDerivatives.HALF_PASCALS", "width of a difference"),
            Map.entry("LiquidRange.HALVINGS", "bounds a search"),
            Map.entry("OperatingNumbers.HIGHEST_PASCALS", "bounds a search"),
            Map.entry("OperatingNumbers.MOST_ROUNDS", "bounds a search"),
            Map.entry("OperatingNumbers.ROUNDING", "rounding of a volume"),
            Map.entry("OperatingNumbers.SETTLED", "accuracy of a solver"),
            Map.entry("LineChartDrawing.PLOT_HEIGHT", "layout of a drawing"),
            Map.entry("Limits.LARGEST_BATTERY", "bounds a search"),
            Map.entry("Limits.USUAL_VESSELS", "the caller's choice, shown"),
            Map.entry("LowerHull.ORIGIN", "marks the origin"),
            Map.entry("LowerHull.ROUNDING", "rounding of a bound"),
            Map.entry("Histogram.BINS", "bounds the memory of a distribution"),
            Map.entry("MonteCarlo.FEWEST", "draws that say something"),
            Map.entry("MonteCarlo.MOST", "draws that can be counted"),
            Map.entry("MonteCarlo.PILOT_BLOCKS", "draws that find a range"),
            Map.entry("NormalSpread.REACH", "where a check takes a normal distribution to end"),
            Map.entry("PiecewiseCubic.FEWEST_FOR_AKIMA", "needed by the spline"),
            Map.entry("PiecewiseCubic.MOST_BUCKETS", "bounds the memory of a look-up"),
            Map.entry("PiecewiseCubic.TERMS", "a cubic has four"),
            Map.entry("PiecewiseCubic.TOUCHING", "rounding of a look-up"),
            Map.entry("PipeCredit.DIMENSIONS", "space has three"),
            Map.entry("PlainText.LONGEST_ECHO", "characters to print"),
            Map.entry("PreSeasonChecklist.WIDTH", "characters to print"),
            Map.entry("Quoted.LONGEST_ECHO", "characters to print"),
            Map.entry("RecordLines.LABEL_WIDTH", "characters to print"),
            Map.entry("RecordLines.VALUE_WIDTH", "characters to print"),
            Map.entry("Root.ACCURACY", "accuracy of a solver"),
            Map.entry("Root.MOST_STEPS", "bounds a solver"),
            Map.entry("ScalePart.ROUNDING", "rounding of a place on a dial"),
            Map.entry("SimpleBeam.HALVINGS", "steps of a bisection"),
            Map.entry("Svg.TENTHS", "rounding of a coordinate"),
            Map.entry("TextMedium.WIDTH", "characters to print"),
            Map.entry("Letters.BOLDER", "width of letters"),
            Map.entry("Letters.CAPITAL", "width of letters"),
            Map.entry("Letters.HALF_A_CAPITAL", "size of letters"),
            Map.entry("Letters.LINE_IN_PIXELS", "size of letters"),
            Map.entry("Letters.NARROW", "width of letters"),
            Map.entry("Letters.SIZE_IN_PIXELS", "size of letters"),
            Map.entry("Letters.USUAL", "width of letters"),
            Map.entry("Letters.WIDE", "width of letters"),
            Map.entry("Surrogate.HEAVIEST", "keeps a sum from overflow"),
            Map.entry("Surrogate.PARTS", "fineness of a bound"),
            Map.entry("Surrogate.ROUNDING", "rounding of a bound"),
            Map.entry("SurrogateWeights.LARGEST", "bounds a search"),
            Map.entry("SurrogateWeights.STEPS", "bounds a search"),
            Map.entry("SurrogateWeights.TURNS", "bounds a search"),
            Map.entry("ExpansionTangent.STEP", "step of a numerical slope"),
            Map.entry("TriangularSpread.CORNERS", "a triangle has three"),
            Map.entry("TagNote.WIDTH", "characters to print"),
            Map.entry("UnreadableQuantityException.LONGEST_ECHO", "characters to print"),
            Map.entry("UserFluid.TRIALS", "points a check looks at"),
            Map.entry("UserFluidTable.FEWEST_ROWS", "needed by the interpolation"),
            Map.entry("UserFluidTable.LEAST_STEP", "rows that count as one"),
            Map.entry("Workings.ORDINAL_WIDTH", "characters to print"),
            Map.entry("Ziggurat.LAYERS", "layers of a drawing method"),
            Map.entry("Ziggurat.PLACE_BITS", "bits of a random number"));

    @Test
    void inCoreAndFluids() {
        Map<String, String> files = javaFiles();
        // A module that is not found must not count as clean.
        MODULES.forEach(module -> assertThat(files.keySet().stream().map(Path::of))
                .as("sources of %s", module)
                .anyMatch(file -> file.startsWith(module)));
        ConstantScan scan = new ConstantScan(files, NOT_ABOUT_PHYSICS.keySet());
        assertThat(scan.bareNumbers())
                .as("numbers without a Source beside them")
                .isEmpty();
        assertThat(scan.usedExceptions())
                .as("exceptions that are still needed")
                .containsExactlyInAnyOrderElementsOf(NOT_ABOUT_PHYSICS.keySet());
    }

    @Test
    void inEveryResourceFile() {
        assertThat(resourceFiles().entrySet().stream()
                        .filter(file -> !file.getKey().endsWith(SCHEMA_ENDING))
                        .filter(file -> !namesItsSource(file.getValue()))
                        .map(Map.Entry::getKey))
                .as("resource files without a \"# ... Source: ...\" line in their header")
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "static final double G = 9.81;",
                "static final double HALF = 0.5;",
                "static final int LAYERS = 7;",
                "private static final int LAYERS = 7;",
                "static final int LISTED = 7;",
                "static final double DIGITS = 7;",
                "final int DIGITS = 7;",
                "static final int DIGITS_OF_X = 7;",
                "private final int LISTED = 7;",
                "double f(double t) { return t + 0.5; }",
                "double f(double t) { return t / 3; }",
                "Object f(Volume v) { return v.text(3000, LITRE); }",
                "Object f() { return VolumeFraction.percent(30); }",
                "static final double[] TABLE = {1, 4.2};",
                "double f(double t) { return 0.31 + t; }",
                "double f(double t) { return t * 5; }",
                "double f(double t) { return t * -1.1; }",
                "double f(double t) { return t + 100; }",
                "boolean f(double t) { return t > 100; }",
                "double f(double t) { return t + 3; }",
                "int f() { return 0x1F; }",
                "Object f() { return PressureDifference.bar(1); }",
                "Object f() { return PressureDifference.bar(0.5); }",
                "Object f() { return PressureDifference.bar(-2); }",
                "Object f(boolean old) { return PressureDifference.bar(old ? 1 : 0); }",
                "Object f() { return litres(100); }",
                "Object f() { return PressureDifference.parse(\"0.3 bar\"); }",
                "Object f() { return new java.math.BigDecimal(\"9.80665\"); }",
                "double f() { return Double.parseDouble(\"9.80665\"); }",
                "Object f() { return rule(0.9, \"a book\"); }",
                "Object f() { return rule(0.9).from(BOOK); }",
                "Object f() { return other(rule(0.9), text(BOOK)); }",
                "Object f() { rule(BOOK); return rule(0.9); }",
            })
    void aBareNumberIsCaught(String member) {
        assertThat(scan(member))
                .singleElement()
                .satisfies(bare -> assertThat(bare.toString()).startsWith("Seeded.java:7 "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "private static final long serialVersionUID = 1L;",
                "private static final int LISTED = 7;",
                "static final int DIGITS = 4;",
                "private static final int PERCENT_DECIMALS = 3;",
                "double f(double t) { return (1 + t) / 2 - 0 * t; }",
                "double f(double t) { return 0.5 * t + t * -0.5; }",
                "double f(double t) { return 3 * t * t - 4 * t; }",
                "double f(double[] n) { return n[27] * n[(int) 28]; }",
                "Object f(String s) { return s.split(\"x\", -1); }",
                "Object f(Volume v) { return v.text(LITRE, 6); }",
                "Object f() { return VolumeFraction.percent(100); }",
                "double f(double t) { return t / 100 + t * 1e-3 + t * 1_000_000L; }",
                "Object f() { return PressureDifference.bar(0); }",
                "Object f() { return litres(0); }",
                "Object f() { return PressureDifference.parse(given); }",
                "Object f() { return text(\"3000 gal\"); }",
                "static final Constant G = new Constant(\"g_n\", 9.80665, \"m/s2\", BOOK);",
                "static final Constant G = new Constant(\"g_n\", 9.80665, \"m/s2\", Source.published(\"a\", \"b\"));",
                "static final Constant G = new Constant(\"g_n\", 9.80665, \"m/s2\", Other.TABLE_2);",
                "Object f() { return rule(0.9, BOOK); }",
                "Object f() { return rule(PressureDifference.bar(0.3), BOOK); }",
                "Object f() { return rule(t -> 0.31 + 3.9e-4 * t * t, BOOK); }",
                "Object f() { return rule(new double[][] {{4, 5}, {6, 7}}, BOOK); }",
                "Object f() { return rule(0.9, other.source()); }",
                "Object f(Source given) { return rule(0.9, given); }",
                "@Deprecated(since = \"1\") int f() { return 1; }",
            })
    void arithmeticAndNumbersWithASourcePass(String member) {
        assertThat(scan(member)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "temperature,density\n0,999.8\n",
                "# What: density of water\ntemperature,density\n",
                "# Source:\n0,999.8\n",
                "0,999.8\n# Source: too late\n",
            })
    void aTableWithoutSourceIsCaught(String file) {
        assertThat(namesItsSource(file)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"# Source: a book, 2012, table 2\n0,999.8\n", "# What: density   Source: a book\n#\n0,999.8\n"})
    void aTableWithSourcePasses(String file) {
        assertThat(namesItsSource(file)).isTrue();
    }

    private static List<ConstantScan.Bare> scan(String member) {
        String seeded = """
                import static org.ullage.quantity.Volume.litres;
                import org.ullage.provenance.Source;
                class Seeded {
                    private static final Source BOOK = Source.published("a book", "p. 1");


                    %s
                }
                """.formatted(member);
        return new ConstantScan(
                        Map.of(
                                "Seeded.java",
                                seeded,
                                "VolumeFraction.java",
                                "class VolumeFraction extends Quantity<VolumeFraction, VolumeFraction> {}",
                                "Volume.java",
                                "class Volume extends AdditiveQuantity<Volume, Volume> {}",
                                "PressureDifference.java",
                                "class PressureDifference extends AdditiveQuantity<PressureDifference, Pressure> {}",
                                "Other.java",
                                "class Other { static final Source TABLE_2 = null; }",
                                "Source.java",
                                "record Source(String d) { static Source published(String d, String p) { return null; } }",
                                "Constant.java",
                                "record Constant(Source source) { public Source source() { return source; } }"),
                        Set.of("Seeded.LISTED"))
                .bareNumbers();
    }

    private static boolean namesItsSource(String file) {
        return file.lines()
                .takeWhile(line -> line.startsWith("#"))
                .anyMatch(line -> line.matches("#.*\\bSource:\\s*\\S.*"));
    }

    private static Map<String, String> javaFiles() {
        return files(Path.of("src", "main", "java"), ".java");
    }

    private static Map<String, String> resourceFiles() {
        return files(Path.of("src", "main", "resources"), "");
    }

    private static Map<String, String> files(Path below, String ending) {
        return MODULES.stream()
                .map(module -> module.resolve(below))
                .filter(Files::isDirectory)
                .flatMap(EveryConstantHasASourceTest::walk)
                .filter(file -> file.toString().endsWith(ending))
                .collect(
                        Collectors.toMap(Path::toString, EveryConstantHasASourceTest::text, (a, b) -> a, TreeMap::new));
    }

    private static Stream<Path> walk(Path directory) {
        try (Stream<Path> files = Files.walk(directory)) {
            return files.filter(Files::isRegularFile).toList().stream();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
