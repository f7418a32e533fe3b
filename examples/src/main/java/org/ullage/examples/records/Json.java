package org.ullage.examples.records;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.nio.charset.StandardCharsets;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;

/** Records as JSON. A plain mapper will do; this one indents. */
public final class Json {

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Json() {}

    /**
     * Reads a record.
     *
     * @param file the file
     * @param type what it holds
     * @param <T> what it holds
     * @return the record
     * @throws BadFileException if it cannot be read; the message names line, place and reason
     */
    public static <T> T read(InputFile file, Class<T> type) throws BadFileException {
        return file.read(stream -> {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            try {
                T value = MAPPER.readValue(text, type);
                if (value == null) {
                    throw new BadFileException("it holds nothing");
                }
                return value;
            } catch (JsonMappingException refused) {
                throw new BadFileException(line(refused) + place(refused) + reason(refused));
            } catch (JsonProcessingException refused) {
                throw new BadFileException(line(refused) + "it is not JSON: " + refused.getOriginalMessage());
            }
        });
    }

    /**
     * Writes a record.
     *
     * @param value the record
     * @return JSON, indented, with a line feed at its end
     */
    public static String write(Object value) {
        try {
            return MAPPER.writeValueAsString(value) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a record could not be written", e);
        }
    }

    private static String line(JsonProcessingException refused) {
        return refused.getLocation() == null
                ? ""
                : "line " + refused.getLocation().getLineNr() + ", ";
    }

    /** Such as {@code vessels[0].nominal: }. */
    private static String place(JsonMappingException refused) {
        StringBuilder place = new StringBuilder();
        for (JsonMappingException.Reference step : refused.getPath()) {
            if (step.getFieldName() == null) {
                place.append('[').append(step.getIndex()).append(']');
            } else {
                place.append(place.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        return place.isEmpty() ? "" : place + ": ";
    }

    private static String reason(JsonMappingException refused) {
        Throwable cause = refused.getCause();
        return cause instanceof IllegalArgumentException
                ? String.valueOf(cause.getMessage())
                : String.valueOf(refused.getOriginalMessage());
    }
}
