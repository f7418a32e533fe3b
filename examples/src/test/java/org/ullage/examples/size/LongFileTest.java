package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.ullage.examples.Program;
import org.ullage.examples.file.BadFileException;

/** A long file is answered as it is read, so that its length does not matter to the memory. */
class LongFileTest {

    private static final int LINES = 100_000;

    /** Lines that fit into the buffers on the way, with room to spare. */
    private static final int AHEAD = 1_000;

    /** Makes the lines when they are asked for. */
    private static final class Loops extends InputStream {

        private int made;
        private byte[] line = (Program.HEADER + "\n").getBytes(StandardCharsets.UTF_8);
        private int place;

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0];
        }

        /** Never more than one line, where the usual way would fill the whole buffer. */
        @Override
        public int read(byte[] target, int offset, int length) {
            if (place == line.length && !next()) {
                return -1;
            }
            int count = Math.min(length, line.length - place);
            System.arraycopy(line, place, target, offset, count);
            place += count;
            return count;
        }

        private boolean next() {
            if (made == LINES) {
                return false;
            }
            made++;
            place = 0;
            // Most of them are refused, which is quicker.
            String vessel = made % 10 == 0 ? "plain-steel" : "";
            line = (made + ",asme-iv," + vessel + ",water,100 gal,,195 degF,,12 psi,30 psi,,,,\n")
                    .getBytes(StandardCharsets.UTF_8);
            return true;
        }
    }

    /** Counts the rows and how far the reading has run ahead of them. */
    private static final class Rows extends OutputStream {

        private final Loops loops;
        private int rows = -1;
        private int furthestAhead;

        private Rows(Loops loops) {
            this.loops = loops;
        }

        @Override
        public void write(int next) {
            write(new byte[] {(byte) next}, 0, 1);
        }

        @Override
        public void write(byte[] text, int offset, int length) {
            for (int i = offset; i < offset + length; i++) {
                rows += text[i] == '\n' ? 1 : 0;
            }
            furthestAhead = Math.max(furthestAhead, loops.made - rows);
        }
    }

    @Test
    void answersEachLineBeforeReadingFarAhead() throws IOException, BadFileException {
        Loops loops = new Loops();
        Rows rows = new Rows(loops);
        LogicalLines lines = new LogicalLines(loops);
        Header header = Header.of(lines.next());

        boolean answered = new SizeRun(
                        new PrintWriter(rows, false, StandardCharsets.UTF_8),
                        new AnswerSheet(new PrintWriter(rows, false, StandardCharsets.UTF_8), false),
                        false,
                        null)
                .answer(header, lines);

        assertThat(answered).isFalse();
        assertThat(rows.rows).isEqualTo(LINES);
        assertThat(rows.furthestAhead).isLessThan(AHEAD);
    }

    @Test
    void stopsWhenNobodyReadsTheAnswer() throws IOException, BadFileException {
        Loops loops = new Loops();
        LogicalLines lines = new LogicalLines(loops);
        Header.of(lines.next());
        OutputStream closed = OutputStream.nullOutputStream();
        closed.close();

        assertThatThrownBy(() -> new SizeRun(
                        new PrintWriter(closed, false, StandardCharsets.UTF_8),
                        new AnswerSheet(new PrintWriter(closed, false, StandardCharsets.UTF_8), false),
                        false,
                        null))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("could not be written");
        assertThat(loops.made).isLessThan(AHEAD);
    }
}
