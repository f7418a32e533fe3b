package org.ullage.examples.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.records.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command {@code demo}. */
@Command(
        name = "demo",
        description = {
            "Sizes the vessel of an invented building and prints the page an installer would keep: the job, the answer, what to"
                    + " watch, the vessels bought, the charge and the fill of the day, what holds them on the wall, the tag and"
                    + " the charge over the years, the same job by other methods, and the steps with their sources; metric and"
                    + " inch-pound.",
            "",
            "Writes the whole as a page with charts, quillbrook-yard.html, and its record, quillbrook-yard.json."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100)
public final class DemoCommand implements Callable<Integer> {

    private static final int WRITTEN = 0;
    private static final int NOT_WRITTEN = 2;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    @Option(names = "--pages", paramLabel = "FOLDER", description = "where page and record go; \"target\" if not given")
    private Path pages = Path.of("target");

    @Option(names = "--charts", paramLabel = "FOLDER", description = "write the two charts of the README there as well")
    private @Nullable Path charts;

    @Override
    public Integer call() {
        DemoStory story = DemoStory.told();
        DemoPage.print(new Page(spec.commandLine().getOut()), story);
        DemoFiles files = new DemoFiles(story);
        try {
            write(pages.resolve("quillbrook-yard.html"), files.page());
            write(pages.resolve("quillbrook-yard.json"), Json.write(story.book()));
            if (charts != null) {
                write(
                        charts.resolve("method-comparison.svg"),
                        files.comparison().svg());
                write(charts.resolve("operating-curve.svg"), files.curve().svg());
            }
            return WRITTEN;
        } catch (IOException e) {
            spec.commandLine().getErr().println("ullage demo: the page could not be written: " + e.getMessage());
            return NOT_WRITTEN;
        }
    }

    private static void write(Path file, String content) throws IOException {
        Path folder = file.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Files.writeString(file, content, StandardCharsets.UTF_8);
    }
}
