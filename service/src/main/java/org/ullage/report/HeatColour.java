package org.ullage.report;

/** The colour of a share between light and dark of one hue, which any eye and any printer tells apart by its lightness. */
final class HeatColour {

    private static final String LIGHT = "#e6f0f7";
    private static final String DARK = "#08406b";
    private static final String BLACK = "#000000";

    /** Base of the digits of a colour. */
    private static final int HEX = 16;

    /** From here on white is easier to read than black. */
    private static final double TURN = 0.66;

    private HeatColour() {}

    /** The face for a share from 0, light, to 1, dark. */
    static String of(double share) {
        StringBuilder colour = new StringBuilder("#");
        for (int digit = 1; digit < LIGHT.length(); digit += 2) {
            int light = part(LIGHT, digit);
            int mixed = (int) Math.round(light + share * (part(DARK, digit) - light));
            colour.append(Character.forDigit(mixed / HEX, HEX)).append(Character.forDigit(mixed % HEX, HEX));
        }
        return colour.toString();
    }

    private static int part(String colour, int digit) {
        return Integer.parseInt(colour.substring(digit, digit + 2), HEX);
    }

    /** The ink to write on it. */
    static String ink(double share) {
        return share > TURN ? Svg.PAPER : BLACK;
    }
}
