package org.ullage.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The cases that ship with this module, and the way to read others written the same way. */
public final class ReferenceCases {

    private static final List<String> FILES = List.of(
            "ashrae.csv",
            "asme-iv.csv",
            "en-12828.csv",
            "raccolta-r.csv",
            "methods-compared.csv",
            "national-practice.csv",
            "solar.csv",
            "pipe-contents.csv",
            "gas-law.csv",
            "glycol-expansion.csv",
            "glycol-density.csv",
            "water-expansion.csv",
            "water-iapws.csv",
            "water-density.csv",
            "water-saturation.csv",
            "gauge-errors.csv",
            "precharge-temperature.csv",
            "swing-states.csv",
            "locked-liquid.csv",
            "waterlogged-weight.csv",
            "rods.csv",
            "channel-beams.csv",
            "seismic.csv",
            "lifting.csv",
            "hanger-spacing.csv",
            "refusals.csv");

    private ReferenceCases() {}

    /**
     * The names of the files.
     *
     * @return in the order of the report
     */
    public static List<String> files() {
        return FILES;
    }

    /**
     * Every case that ships with this module.
     *
     * @return in the order of the files
     */
    public static List<ReferenceCase> all() {
        return FILES.stream().flatMap(file -> ofFile(file).stream()).toList();
    }

    /**
     * Reads cases of your own.
     *
     * @param file name for the report and for messages
     * @param text the text: the columns of the files that ship with this module
     * @return the cases
     * @throws IllegalArgumentException if a line cannot be read; the message names file, line and reason
     */
    public static List<ReferenceCase> read(String file, Reader text) {
        return List.copyOf(new CaseFileReader(file).read(text));
    }

    private static List<ReferenceCase> ofFile(String file) {
        InputStream stream = ReferenceCases.class.getResourceAsStream(file);
        if (stream == null) {
            throw new IllegalStateException("the case file " + file + " is missing from the class path");
        }
        try (Reader text = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return read(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the case file " + file, e);
        }
    }
}
