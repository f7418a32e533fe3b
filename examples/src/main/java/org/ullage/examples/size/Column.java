package org.ullage.examples.size;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** The columns of the input. */
enum Column {
    ID("id", true),
    METHOD("method", true),
    VESSEL("vessel", true),
    FLUID("fluid", true),
    CONTENTS("contents", true),
    COLD("cold", false),
    HOT("hot", false),
    PIPE("pipe", false),
    COLD_PRESSURE("cold_pressure", false),
    FINAL_PRESSURE("final_pressure", false),
    STATIC_HEAD("static_head", false),
    RELIEF_SETTING("relief_setting", false),
    PRECHARGE("precharge", false),
    ATMOSPHERE("atmosphere", false);

    private final String word;
    private final boolean required;

    Column(String word, boolean required) {
        this.word = word;
        this.required = required;
    }

    /** The name in the header. */
    String word() {
        return word;
    }

    /** Whether the header must have it. */
    boolean required() {
        return required;
    }

    static Optional<Column> named(String word) {
        return Arrays.stream(values())
                .filter(column -> column.word.equals(word))
                .findFirst();
    }

    /** All names, for messages. */
    static String words() {
        return Arrays.stream(values()).map(Column::word).collect(Collectors.joining(", "));
    }
}
