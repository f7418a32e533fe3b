package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each package says what it is for, where to start and what is around it; the overview and the groups of the Javadoc name each. */
class PackageMapTest {

    private static final Path ROOT = Path.of("..");

    private static Stream<Path> packages() throws IOException {
        List<Path> found = new ArrayList<>();
        for (String module : List.of("core", "fluids", "service", "reference-tests")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve(Path.of("src", "main", "java")))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .map(Path::getParent)
                        .distinct()
                        .forEach(found::add);
            }
        }
        return found.stream();
    }

    private static String name(Path folder) {
        return "org.ullage." + folder.getFileName();
    }

    @Test
    void allPackagesAreLookedAt() throws IOException {
        assertThat(packages().map(PackageMapTest::name))
                .contains("org.ullage.loop", "org.ullage.fluids", "org.ullage.report", "org.ullage.reference");
    }

    @ParameterizedTest
    @MethodSource("packages")
    void hasAMap(Path folder) throws IOException {
        String comment = Files.readString(folder.resolve("package-info.java")).replaceAll("\\s+\\*?\\s*", " ");
        assertThat(comment)
                .containsPattern("[Ss]tart at \\{@link " + name(folder).replace(".", "\\.") + "\\.[A-Z]")
                .contains("Around it: ");
    }

    @ParameterizedTest
    @MethodSource("packages")
    void isInTheOverview(Path folder) throws IOException {
        assertThat(Files.readString(ROOT.resolve(Path.of("src", "main", "javadoc", "overview.html"))))
                .contains("{@link " + name(folder) + "}");
    }

    @ParameterizedTest
    @MethodSource("packages")
    void isInAGroup(Path folder) throws IOException {
        assertThat(Files.readString(ROOT.resolve("pom.xml")))
                .containsPattern("[>:]" + name(folder).replace(".", "\\.") + "[:<]");
    }
}
