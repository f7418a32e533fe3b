package org.ullage.reference;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Provenance;
import org.ullage.provenance.Source;

/** Reads one case file: RFC 4180 with comment lines that begin with {@code #} and one header line. */
final class CaseFileReader {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();

    private final String file;

    CaseFileReader(String file) {
        this.file = file;
    }

    List<ReferenceCase> read(Reader text) {
        try (CSVParser parser = FORMAT.parse(text)) {
            List<ReferenceCase> cases = new ArrayList<>();
            for (CSVRecord line : parser) {
                cases.add(read(line, parser.getCurrentLineNumber()));
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the case file " + file, e);
        }
    }

    private ReferenceCase read(CSVRecord line, long number) {
        try {
            return toCase(line);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(file + ", line " + number + ": " + e.getMessage(), e);
        }
    }

    private ReferenceCase toCase(CSVRecord line) {
        if (!line.isConsistent()) {
            throw new IllegalArgumentException("the line has " + line.size() + " fields, not as many as the header");
        }
        Asked asked = Asked.ofWords(line.get("question"));
        return new ReferenceCase(
                line.get("id"),
                file,
                Question.of(asked, line.get("inputs")),
                Verdict.ofWord(line.get("verdict")),
                target(asked.measure(), line.get("stated"), line.get("tolerance")),
                line.get("tolerance_reason"),
                target(asked.measure(), line.get("corrected"), line.get("corrected_tolerance")),
                line.get("explanation"),
                source(line));
    }

    private static @Nullable Target target(Measure measure, String figure, String tolerance) {
        return figure.isEmpty() ? null : Target.of(measure, figure, tolerance);
    }

    private static Source source(CSVRecord line) {
        return new Source(
                Provenance.valueOf(line.get("provenance").toUpperCase(Locale.ROOT)),
                line.get("document"),
                line.get("place"),
                line.get("reading"));
    }
}
