package org.ullage.fluids;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnreadableQuantityException;
import org.ullage.quantity.VolumeFraction;

/**
 * Fluids by name, as files and forms state them: {@code water}, {@code water/kell}, {@code propylene glycol 30 vol%},
 * {@code ethylene glycol 40 mass%/melinder}. Case does not matter, nor do blanks beyond those that part words.
 */
public final class Fluids {

    private static final Pattern GLYCOL = Pattern.compile("(propylene|ethylene) ?glycol ?([^/]*)");

    private static final Map<String, LoopFluid> WATER = new TreeMap<>(Map.of(
            "if97", Water.IAPWS_IF97,
            "kell", Water.KELL_1975,
            "table", Water.SATURATED_TABLE));

    private Fluids() {}

    /**
     * Reads a fluid's name. Without a model after a slash, water is by IAPWS-IF97 and a glycol mixture by its default model.
     *
     * @param text such as {@code propylene glycol 30 vol%/ashrae}
     * @return the fluid
     * @throws OutOfRangeException if the fluid, its concentration or its model is not known; it lists what is
     */
    public static LoopFluid parse(String text) {
        String plain =
                text.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ").replaceAll(" ?/ ?", "/");
        int slash = plain.indexOf('/');
        String fluid = slash < 0 ? plain : plain.substring(0, slash);
        Optional<String> model = slash < 0 ? Optional.empty() : Optional.of(plain.substring(slash + 1));
        if (fluid.equals("water")) {
            return water(model, text);
        }
        Matcher parts = GLYCOL.matcher(fluid);
        if (!parts.matches()) {
            throw unknown("fluid", text);
        }
        Glycol glycol = parts.group(1).equals("propylene") ? Glycol.PROPYLENE : Glycol.ETHYLENE;
        return glycol(glycol, parts.group(2), model.map(id -> glycolModel(id, text)), text);
    }

    /**
     * What {@link #parse(String)} reads.
     *
     * @return each form once, in words
     */
    public static List<String> known() {
        String models = Arrays.stream(GlycolModel.values()).map(GlycolModel::id).collect(Collectors.joining(" or "));
        return List.of(
                "water",
                "water/" + String.join(" or ", WATER.keySet()),
                "propylene glycol <number> vol% or mass%",
                "ethylene glycol <number> vol% or mass%",
                "either glycol followed by / and " + models);
    }

    /**
     * The models of plain water.
     *
     * @return IAPWS-IF97, Kell 1975 and the saturated-liquid table
     */
    public static List<LoopFluid> waterModels() {
        return List.copyOf(WATER.values());
    }

    private static LoopFluid water(Optional<String> model, String text) {
        LoopFluid found = WATER.get(model.orElse("if97"));
        if (found == null) {
            throw unknown("model of water", text);
        }
        return found;
    }

    private static GlycolModel glycolModel(String id, String text) {
        return GlycolModel.withId(id).orElseThrow(() -> unknown("model of glycol", text));
    }

    private static LoopFluid glycol(Glycol glycol, String concentration, Optional<GlycolModel> model, String text) {
        // "30vol%", "30 vol %" and "30 % vol" are all meant the same
        String number = concentration.replaceFirst("^([-+0-9.e]+)\\s*", "$1 ").strip();
        String unit = number.replaceAll("[-+0-9.\\s]", "");
        try {
            if (unit.contains("vol")) {
                VolumeFraction volume = VolumeFraction.parse(number);
                return model.map(m -> glycol.by(m, volume)).orElseGet(() -> glycol.of(volume));
            }
            if (unit.contains("mass") || unit.contains("wt")) {
                MassFraction mass = MassFraction.parse(number);
                return model.map(m -> glycol.by(m, mass)).orElseGet(() -> glycol.of(mass));
            }
        } catch (UnreadableQuantityException unreadable) {
            throw unknown("concentration", text);
        }
        throw new OutOfRangeException(
                "concentration in \"" + text + "\"",
                "\"" + concentration + "\"",
                "a number followed by vol% or mass%",
                "say which percentage it is: they differ by several points");
    }

    private static OutOfRangeException unknown(String what, String text) {
        return new OutOfRangeException(
                what, "\"" + text + "\"", "one of: " + String.join("; ", known()), "write it in one of these ways");
    }
}
