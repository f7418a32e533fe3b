package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.StringWriter;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ullage.quantity.Quantity;

/** The library asks its user for no Jackson: neither to compile and document without a warning, nor to run. */
class WithoutJacksonTest {

    private static final String PROGRAM = """
            import java.time.LocalDate;
            import java.util.function.Supplier;
            import org.ullage.quantity.*;
            import org.ullage.record.*;
            import org.ullage.vessel.VesselKind;

            public class Program implements Supplier<String> {
                public ServiceBook book(Volume nominal) {
                    VesselNote vessel = VesselNote.of("V1").kind(VesselKind.BLADDER).nominal(nominal).build();
                    return ServiceBook.of(CommissioningNote.of("Shed", LocalDate.of(2020, 1, 1), "A", vessel).build());
                }

                @Override
                public String get() {
                    ServiceBook book = book(Volume.litres(50));
                    int annotations = ServiceBook.class.getAnnotations().length + Gas.class.getAnnotations().length;
                    return annotations + TagNote.of(book, "V1").text(UnitSystem.SI)
                            + ChargeTrend.of(book, "V1", AbsolutePressure.STANDARD_ATMOSPHERE).text(UnitSystem.SI);
                }
            }
            """;

    private static final URL CORE = place(Quantity.class);
    private static final URL SERVICE = place(ServiceBook.class);
    private static final URL MATH = place(TDistribution.class);
    private static final String CLASS_PATH =
            path(CORE) + File.pathSeparator + path(SERVICE) + File.pathSeparator + path(MATH);

    @Test
    void compilesAndRuns(@TempDir Path classes) throws Exception {
        StringWriter said = new StringWriter();
        List<String> options =
                List.of("-Xlint:all", "-Werror", "-proc:none", "-classpath", CLASS_PATH, "-d", classes.toString());
        boolean compiled = ToolProvider.getSystemJavaCompiler()
                .getTask(said, null, null, options, null, List.of(new Program()))
                .call();
        assertThat(said.toString()).isEmpty();
        assertThat(compiled).isTrue();
        URL[] path = {CORE, SERVICE, MATH, classes.toUri().toURL()};
        try (URLClassLoader loader = new URLClassLoader(path, ClassLoader.getPlatformClassLoader())) {
            assertThatThrownBy(() -> loader.loadClass("com.fasterxml.jackson.annotation.JsonValue"))
                    .isInstanceOf(ClassNotFoundException.class);
            Supplier<?> program =
                    (Supplier<?>) loader.loadClass("Program").getConstructor().newInstance();
            assertThat(program.get().toString()).contains("bladder, 50 L").contains("too few readings");
        }
    }

    @Test
    void documentsWithoutAWarning(@TempDir Path pages) {
        StringWriter said = new StringWriter();
        List<String> options = List.of("-quiet", "-Xdoclint:none", "-classpath", CLASS_PATH, "-d", pages.toString());
        boolean documented = ToolProvider.getSystemDocumentationTool()
                .getTask(said, null, null, null, options, List.of(new Program()))
                .call();
        assertThat(said.toString()).isEmpty();
        assertThat(documented).isTrue();
    }

    private static URL place(Class<?> type) {
        return type.getProtectionDomain().getCodeSource().getLocation();
    }

    private static Path path(URL place) {
        return Path.of(URI.create(place.toString()));
    }

    /** The program as a source file held as text. */
    private static final class Program extends SimpleJavaFileObject {

        Program() {
            super(URI.create("string:///Program.java"), Kind.SOURCE);
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return PROGRAM;
        }
    }
}
