package org.ullage.examples;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** Tells the version that the build wrote beside the classes. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"Ullage " + built()};
    }

    private static String built() {
        try (InputStream text = Version.class.getResourceAsStream("version.txt")) {
            if (text == null) {
                throw new IllegalStateException("version.txt is missing from the program");
            }
            return new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
