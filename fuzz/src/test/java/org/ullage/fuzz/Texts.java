package org.ullage.fuzz;

import java.util.List;

/** Texts: made by grammar, spoilt, or of any characters at all. */
final class Texts {

    private static final List<String> UNITS = List.of(
            "Pa",
            "kPa",
            "MPa",
            "bar",
            "mbar",
            "psi",
            "psig",
            "psia",
            "bara",
            "barg",
            "mH2O",
            "ftH2O",
            "K",
            "degC",
            "degF",
            "degR",
            "\u00b0C",
            "\u00b0F",
            "m3",
            "L",
            "l",
            "gal",
            "ft3",
            "m2",
            "mm2",
            "in2",
            "ft2",
            "m",
            "mm",
            "ft",
            "in",
            "kg",
            "g",
            "lb",
            "kg/m3",
            "lb/ft3",
            "m3/kg",
            "L/kg",
            "ft3/lb",
            "W",
            "kW",
            "Btu/h",
            "N",
            "kN",
            "lbf",
            "N m",
            "lbf ft",
            "lbf in",
            "%",
            "vol%",
            "mass%",
            "1/K",
            "1/degF",
            "ksi",
            "cm3",
            "cm4",
            "in3",
            "in4",
            "delta degC");

    private static final List<String> ENDINGS =
            List.of("", "", "", "", "", " abs", " absolute", " gauge", "a", "g", " ");

    private static final List<String> ODD = List.of(
            "",
            "\0",
            "\"",
            "\"\"",
            ",",
            ";",
            "\n",
            "\r\n",
            "\t",
            "\u00a0",
            "\u202f",
            "\ufeff",
            "\u2212",
            "\u0663",
            "\ud800",
            "\udc00",
            "\ud83d\ude00",
            "e",
            "E+",
            "-",
            "+",
            ".",
            "..",
            "'",
            "=1+1",
            "NaN",
            "Infinity",
            "0x1p3",
            "1e999",
            "1e-999",
            "\u2028",
            "abs abs",
            "{",
            "}",
            "[",
            "]",
            ":",
            "\\",
            "\\u0000",
            "null",
            "true");

    /** A refusal repeats a name as it was given. */
    private static final int LONGEST_NAME = 60;

    private Texts() {}

    /** A number as people, programs and mischief write it. */
    static String number(Draw draw) {
        return switch (draw.below(8)) {
            case 0 -> Double.toString(draw.number(-1000, 1000));
            case 1 -> Integer.toString(draw.below(1000));
            case 2 -> draw.below(1000) + "." + draw.below(1000);
            case 3 -> draw.between(0, 10) + "e" + (draw.below(40) - 20);
            case 4 -> "." + draw.below(1000);
            case 5 -> draw.below(1000) + ".";
            case 6 -> "0".repeat(draw.below(5)) + draw.below(1000);
            default -> draw.bold() ? Double.toString(draw.edge()) : "+" + draw.between(0, 1e6);
        };
    }

    static String quantity(Draw draw) {
        return quantity(draw, draw.of(UNITS));
    }

    static String quantity(Draw draw, String unit) {
        return number(draw) + draw.of("", " ", " ", "\u00a0", "  ") + unit + draw.of(ENDINGS);
    }

    /** A text with a few characters put in, taken out, doubled or exchanged. */
    static String spoilt(String text, Draw draw) {
        StringBuilder spoilt = new StringBuilder(text);
        int changes = 1 + draw.below(3);
        for (int i = 0; i < changes; i++) {
            int at = draw.below(spoilt.length() + 1);
            int end = Math.min(spoilt.length(), at + 1 + draw.below(4));
            switch (draw.below(5)) {
                case 0 -> spoilt.delete(at, end);
                case 1 -> spoilt.insert(at, draw.of(ODD));
                case 2 -> spoilt.insert(at, (char) draw.below(0x250));
                case 3 -> spoilt.insert(at, spoilt.substring(at, end));
                default -> spoilt.insert(at, number(draw));
            }
        }
        return spoilt.toString();
    }

    /** Any characters, lone surrogates too; seldom very many. */
    static String any(Draw draw) {
        int length = draw.chance(0.002) ? draw.below(100_000) : draw.below(40);
        StringBuilder text = new StringBuilder(length);
        while (text.length() < length) {
            switch (draw.below(4)) {
                case 0 -> text.append((char) draw.below(0x80));
                case 1 -> text.append((char) draw.below(0x10000));
                case 2 -> text.append(draw.of(ODD));
                default -> text.append(draw.below(10));
            }
        }
        return text.toString();
    }

    /** Any characters, but no word that would mean a fault where it is printed again. */
    static String name(Draw draw) {
        String any = any(draw).replaceAll("NaN|Infinity|null", "?");
        return "V" + any.substring(0, Math.min(any.length(), LONGEST_NAME));
    }
}
