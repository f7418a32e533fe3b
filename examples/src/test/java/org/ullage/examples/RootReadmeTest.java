package org.ullage.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The project's README shows what the program really prints, and its example compiles, runs and prints what it says. */
class RootReadmeTest {

    private static final Path README = Path.of("../README.md");
    private static final Pattern DEMO =
            Pattern.compile("ullage-examples.jar demo\n```.*?```text\n(.*?)```", Pattern.DOTALL);
    private static final Pattern EXAMPLE =
            Pattern.compile("```java\n(.*?class (\\w+) .*?)```.*?```text\n(.*?)```", Pattern.DOTALL);
    private static final String REST = "...\n";

    @TempDir
    private Path classes;

    @Test
    void demoPrintsWhatIsShown() throws IOException {
        String shown = find(DEMO).group(1);
        assertThat(shown).endsWith(REST);
        assertThat(Program.run("demo").out()).startsWith(shown.substring(0, shown.length() - REST.length()));
    }

    @Test
    void exampleCompilesRunsAndPrintsWhatIsShown() throws Exception {
        MatchResult example = find(EXAMPLE);
        compile(example.group(2), example.group(1));
        assertThat(run(example.group(2))).isEqualTo(example.group(3));
    }

    private static MatchResult find(Pattern pattern) throws IOException {
        return pattern.matcher(Files.readString(README)).results().findFirst().orElseThrow();
    }

    private void compile(String name, String code) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        SimpleJavaFileObject source =
                new SimpleJavaFileObject(URI.create("string:///" + name + ".java"), SimpleJavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return code;
                    }
                };
        List<String> options =
                List.of("-d", classes.toString(), "-cp", System.getProperty("java.class.path"), "-proc:none");
        assertThat(compiler.getTask(null, null, null, options, null, List.of(source))
                        .call())
                .as("the example of README.md compiles")
                .isTrue();
    }

    private String run(String name) throws Exception {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {classes.toUri().toURL()})) {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            var main = loader.loadClass(name).getDeclaredMethod("main", String[].class);
            main.setAccessible(true);
            main.invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(console);
        }
        return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }
}
