package org.ullage.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/**
 * The cases that ship with this module as one numbered edition. The number is of the cases, not of the library: cases added raise the
 * second part, a demand that changes or goes raises the first, words alone the third.
 */
public final class ReferenceSuite {

    private static final String FILE = "suite.properties";

    private ReferenceSuite() {}

    /**
     * The edition of the cases, to be written beside every result.
     *
     * @return such as {@code 1.0.0}
     */
    public static String version() {
        return property("version");
    }

    /** What the case lines of this edition add up to, as it is kept beside the version. */
    static String digest() {
        return property("digest");
    }

    private static String property(String name) {
        Properties properties = new Properties();
        try (InputStream stream = ReferenceSuite.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException("the file " + FILE + " is missing from the class path");
            }
            properties.load(stream);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FILE, e);
        }
        return properties.getProperty(name, "");
    }
}
