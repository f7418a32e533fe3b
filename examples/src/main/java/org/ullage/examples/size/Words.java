package org.ullage.examples.size;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ullage.examples.file.Quoted;
import org.ullage.loop.PipeMaterial;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** Reads the columns that take one of a few words. */
final class Words {

    private static final Map<String, VesselKind> VESSELS =
            Arrays.stream(VesselKind.values()).collect(Collectors.toMap(VesselKind::word, Function.identity()));

    private static final Map<String, PipeMaterial> PIPES = Map.of(
            "steel", PipeMaterial.STEEL,
            "copper", PipeMaterial.COPPER,
            "none", PipeMaterial.RIGID);

    private Words() {}

    static VesselType vessel(String text) {
        return VesselType.of(one("vessel", text, VESSELS));
    }

    static PipeMaterial pipe(String text) {
        return one("pipe", text, PIPES);
    }

    private static <T> T one(String what, String text, Map<String, T> words) {
        T found = words.get(text.toLowerCase(Locale.ROOT));
        if (found == null) {
            throw new OutOfRangeException(
                    what,
                    Quoted.of(text),
                    "one of " + String.join(", ", new TreeMap<>(words).keySet()),
                    "write one of these words");
        }
        return found;
    }
}
