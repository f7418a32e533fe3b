package org.ullage.sharing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;

/** Values in a stream, where every field that makes up a value is written to the last bit. */
final class Stored {

    private Stored() {}

    static byte[] bytes(Serializable value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new EveryTextOnce(bytes)) {
            out.writeObject(value);
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "cannot be written: " + value.getClass().getName(), e);
        }
        return bytes.toByteArray();
    }

    /** Writes equal texts once, so that equal values have equal bytes whether or not their texts are the same objects. */
    private static final class EveryTextOnce extends ObjectOutputStream {

        EveryTextOnce(OutputStream out) throws IOException {
            super(out);
            enableReplaceObject(true);
        }

        @Override
        protected Object replaceObject(Object value) {
            return value instanceof String text ? text.intern() : value;
        }
    }

    @SuppressWarnings("BanSerializableRead") // the bytes are our own
    static Serializable read(byte[] bytes) {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            return (Serializable) in.readObject();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot be read back", e);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}
