package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What must not be mixed does not compile, and for that reason alone: the corrected line beside it does. */
class TypesDoNotMixTest {

    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AbsolutePressure x = GaugePressure.bar(1)                              | AbsolutePressure x = GaugePressure.bar(1).absolute(AIR)                              | GaugePressure cannot be converted to AbsolutePressure
            GaugePressure x = AbsolutePressure.bar(2)                              | GaugePressure x = AbsolutePressure.bar(2).gauge(AIR)                                  | AbsolutePressure cannot be converted to GaugePressure
            GaugePressure x = PressureDifference.bar(1)                            | GaugePressure x = GaugePressure.bar(0).plus(PressureDifference.bar(1))                | PressureDifference cannot be converted to GaugePressure
            GaugePressure x = GaugePressure.bar(1).plus(GaugePressure.bar(1))      | GaugePressure x = GaugePressure.bar(1).plus(PressureDifference.bar(1))                | GaugePressure cannot be converted to PressureDifference
            PressureDifference x = AIR.minus(GaugePressure.bar(1))                 | PressureDifference x = AIR.minus(AbsolutePressure.bar(1))                             | GaugePressure cannot be converted to AbsolutePressure
            int x = AIR.compareTo(GaugePressure.bar(1))                            | int x = AIR.compareTo(AbsolutePressure.bar(1))                                        | GaugePressure cannot be converted to AbsolutePressure
            TemperatureDifference x = Temperature.celsius(40)                      | TemperatureDifference x = Temperature.celsius(40).minus(Temperature.celsius(10))      | Temperature cannot be converted to TemperatureDifference
            Temperature x = TemperatureDifference.kelvins(40)                      | Temperature x = Temperature.celsius(10).plus(TemperatureDifference.kelvins(40))       | TemperatureDifference cannot be converted to Temperature
            Temperature x = Temperature.celsius(40).plus(Temperature.celsius(10))  | Temperature x = Temperature.celsius(40).plus(TemperatureDifference.kelvins(10))       | Temperature cannot be converted to TemperatureDifference
            Temperature x = Temperature.of(40, Units.KELVIN_DIFFERENCE)            | Temperature x = Temperature.of(40, Units.KELVIN)                                      | Unit<TemperatureDifference> cannot be converted to Unit<Temperature>
            VolumeFraction x = MassFraction.percent(30)                            | VolumeFraction x = VolumeFraction.percent(30)                                         | MassFraction cannot be converted to VolumeFraction
            VolumeFraction x = VolumeFraction.of(30, Units.MASS_PERCENT)           | VolumeFraction x = VolumeFraction.of(30, Units.VOLUME_PERCENT)                        | Unit<MassFraction> cannot be converted to Unit<VolumeFraction>
            Density x = SpecificVolume.cubicMetresPerKilogram(0.001)               | Density x = SpecificVolume.cubicMetresPerKilogram(0.001).density()                    | SpecificVolume cannot be converted to Density
            Force x = Mass.kilograms(10)                                           | Force x = Mass.kilograms(10).weight()                                                 | Mass cannot be converted to Force
            Stress x = PressureDifference.bar(10)                                    | Stress x = Stress.megapascals(1)                                                      | PressureDifference cannot be converted to Stress
            Volume x = Volume.of(3, Units.BAR)                                     | Volume x = Volume.of(3, Units.LITRE)                                                  | Unit<Pressure> cannot be converted to Unit<Volume>
            double x = Volume.litres(3).in(Units.KILOGRAM)                         | double x = Volume.litres(3).in(Units.CUBIC_FOOT)                                      | Unit<Mass> cannot be converted to Unit<Volume>
            String x = Length.metres(9).text(Units.METRE_OF_WATER)                 | String x = Length.metres(9).text(Units.FOOT)                                          | Unit<Pressure> cannot be converted to Unit<Length>
            Volume x = Volume.litres(1).plus(Mass.kilograms(1))                    | Volume x = Volume.litres(1).plus(Volume.gallons(1))                                   | Mass cannot be converted to Volume
            Volume x = Volume.litres(1).plus(1)                                    | Volume x = Volume.litres(1).times(1)                                                  | int cannot be converted to Volume
            """)
    void aMixedUpLineDoesNotCompileAndItsCorrectionDoes(String mixedUp, String corrected, String reason) {
        assertThat(errors(corrected)).isEmpty();
        assertThat(errors(mixedUp))
                .singleElement()
                .satisfies(error -> assertThat(error.getMessage(Locale.ENGLISH).replace("org.ullage.quantity.", ""))
                        .contains(reason));
    }

    private static List<Diagnostic<? extends JavaFileObject>> errors(String line) {
        DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
        List<String> options = List.of("-proc:none", "-implicit:none", "-cp", classes(), "-Xdiags:verbose");
        JavacTask task =
                (JavacTask) COMPILER.getTask(null, null, diagnostics, options, null, List.of(new Snippet(line)));
        try {
            // Attributes the types and stops before any class file is written.
            task.analyze();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return diagnostics.getDiagnostics().stream()
                .filter(diagnostic -> diagnostic.getKind() == Diagnostic.Kind.ERROR)
                .toList();
    }

    private static String classes() {
        try {
            return Path.of(Quantity.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException impossible) {
            throw new AssertionError(impossible);
        }
    }

    /** A user's class in memory with one line in a method. */
    private static final class Snippet extends SimpleJavaFileObject {

        private final String line;

        Snippet(String line) {
            super(URI.create("string:///user/Snippet.java"), Kind.SOURCE);
            this.line = line;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return """
                    package user;
                    import org.ullage.quantity.*;
                    class Snippet {
                        private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
                        void method() {
                            %s;
                        }
                    }
                    """.formatted(line);
        }
    }
}
