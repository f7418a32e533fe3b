package org.ullage.examples.size;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.published.Methods;

/** Takes one file from its first line to its last; keeps no more than one line in memory. */
final class SizeRun {

    private final PrintWriter out;
    private final boolean allMethods;
    private final Answers sheet;
    private final @Nullable WorkingsSpool workings;
    private boolean allAnswered = true;

    /**
     * Begins a run.
     *
     * @param sheet where the answers go
     * @param allMethods whether each line is put to every method
     * @param workings where the workings are kept, or null if they are not wanted
     */
    SizeRun(PrintWriter out, Answers sheet, boolean allMethods, @Nullable WorkingsSpool workings) {
        this.out = out;
        this.allMethods = allMethods;
        this.workings = workings;
        this.sheet = sheet;
    }

    /**
     * Answers every line.
     *
     * @return whether every line was answered by the method it names
     */
    boolean answer(Header header, LogicalLines lines) throws IOException {
        LogicalLine line = lines.next();
        while (line != null) {
            if (!line.isBlank()) {
                answer(header, line);
            }
            line = lines.next();
        }
        sheet.end();
        if (workings != null) {
            workings.copyTo(out);
        }
        return allAnswered;
    }

    private void answer(Header header, LogicalLine line) throws IOException {
        List<String> cells = line.roughCells();
        try {
            cells = line.cells();
            answer(LoopReader.read(header.line(line, cells)));
        } catch (BadLineException e) {
            allAnswered = false;
            sheet.refuse(
                    header.echo(Column.ID, cells),
                    header.echo(Column.METHOD, cells).strip(),
                    String.valueOf(e.getMessage()));
        }
    }

    private void answer(LoopCase loop) throws IOException {
        for (Method method : allMethods ? Methods.all() : List.of(loop.method())) {
            try {
                answer(loop, method.size(loop.job()));
            } catch (IllegalArgumentException e) {
                allAnswered &= method != loop.method();
                sheet.refuse(loop.line().id(), method.name(), Refusal.text(loop, method, e));
            }
        }
    }

    private void answer(LoopCase loop, Sizing sizing) throws IOException {
        // Derived first: were it refused, there would already be a row.
        String steps = workings == null ? "" : WorkingsSpool.text(loop, sizing);
        sheet.answer(loop, sizing);
        if (workings != null) {
            workings.add(steps);
        }
    }
}
