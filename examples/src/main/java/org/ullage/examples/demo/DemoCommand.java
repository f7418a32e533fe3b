package org.ullage.examples.demo;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code demo}. */
@Command(
        name = "demo",
        description = {
            "Sizes the vessel of an invented building and prints the page an installer would keep: the job, the answer, what to"
                    + " watch, the vessels bought, the charge and the fill of the day, what holds them on the wall, the same job by"
                    + " other methods, and the steps with their sources; metric and inch-pound."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100)
public final class DemoCommand implements Runnable {

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    @Override
    public void run() {
        DemoPage.print(new Page(spec.commandLine().getOut()));
    }
}
