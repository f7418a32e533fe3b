package org.ullage.loop;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * Kinds of heating systems for a quick estimate of the whole contents from boiler output.
 *
 * <p>The typical value is one rule of thumb. Published rules for the same thing, a whole system of unknown kind, differ by a
 * factor of 1.5 from lowest to highest, so a single rule is given a band of the square root of that either way; other rules for
 * the same kind widen it.
 */
public enum EmitterType {
    /** Convectors and perimeter heating. */
    CONVECTORS("convectors"),
    /** Air handling units, fan coils and other ventilation coils. */
    AIR_COILS("air handling units and fan coils"),
    /** Steel panel radiators. */
    STEEL_PANEL_RADIATORS("steel panel radiators"),
    /** Radiators of low water content. */
    LOW_CONTENT_RADIATORS("low-content radiators"),
    /** Cast iron radiators. */
    CAST_IRON_RADIATORS("cast iron radiators"),
    /** Floor heating. */
    UNDERFLOOR("floor heating"),
    /** Emitters of any kind at the end of long mains. */
    LONG_MAINS("long distributed mains"),
    /** A small domestic or microbore system with any emitters. */
    SMALL_DOMESTIC("small domestic system"),
    /** Nothing is known but the output. */
    NOT_KNOWN("emitters not known");

    private final String words;

    EmitterType(String words) {
        this.words = words;
    }

    /**
     * One rule of thumb.
     *
     * @param litresPerKilowatt litres for each kilowatt of boiler output
     * @param source where it comes from
     */
    public record Rule(double litresPerKilowatt, Source source) implements Serializable {}

    /** Holds the rules, so that they are read when the first is asked for. */
    private static final class Rules {

        private static final CitedTable TABLE = CitedTable.read(Loop.class, "contents-whole-system.tsv");

        /** How far one rule may be from another for the same thing, either way. */
        private static final double BAND = Math.sqrt(highest(of(NOT_KNOWN)) / lowest(of(NOT_KNOWN)));

        private static List<Rule> of(EmitterType type) {
            return TABLE.rows().stream()
                    .filter(row -> type.name().equals(row.get("emitters")))
                    .map(Rules::rule)
                    .toList();
        }

        private static Rule rule(Map<String, String> row) {
            return new Rule(
                    Double.parseDouble(row.getOrDefault("litres_per_kilowatt", "")),
                    TABLE.source(row.getOrDefault("mark", "")));
        }

        private static double lowest(List<Rule> rules) {
            return rules.stream().mapToDouble(Rule::litresPerKilowatt).min().orElseThrow();
        }

        private static double highest(List<Rule> rules) {
            return rules.stream().mapToDouble(Rule::litresPerKilowatt).max().orElseThrow();
        }
    }

    /**
     * The kind of this name.
     *
     * @param words such as {@code steel panel radiators}
     * @return the kind
     * @throws OutOfRangeException if there is none; the message lists them
     */
    public static EmitterType named(String words) {
        return Arrays.stream(values())
                .filter(type -> type.words.equalsIgnoreCase(words.strip()))
                .findFirst()
                .orElseThrow(() -> new OutOfRangeException(
                        "kind of emitters",
                        Quoted.of(words),
                        "one of "
                                + String.join(
                                        ", ",
                                        Arrays.stream(values())
                                                .map(EmitterType::toString)
                                                .toList()),
                        "take the nearest, or \"" + NOT_KNOWN + "\""));
    }

    /**
     * The rules of thumb for this kind.
     *
     * @return the rules, the typical one first
     */
    public List<Rule> rules() {
        return Rules.of(this);
    }

    /**
     * The contents of the whole system.
     *
     * @param output boiler output, above zero
     * @return a line for a list, with the sources of all its rules
     * @throws OutOfRangeException if the output is zero or negative
     */
    public ContentsItem item(Power output) {
        List<Rule> rules = rules();
        double typical = rules.get(0).litresPerKilowatt();
        VolumeRange perKilowatt = new VolumeRange(
                Volume.litres(Math.min(typical / Rules.BAND, Rules.lowest(rules))),
                Volume.litres(typical),
                Volume.litres(Math.max(typical * Rules.BAND, Rules.highest(rules))));
        return new ContentsItem(
                "whole system, " + words,
                Amount.of(output),
                perKilowatt.times(Units.KILOWATT.numberOf(output.si())),
                null,
                rules.stream().map(Rule::source).toList());
    }

    /**
     * The kind in words.
     *
     * @return such as {@code steel panel radiators}
     */
    @Override
    public String toString() {
        return words;
    }
}
