package org.ullage.report;

/** The colour of a share between light and dark of one hue, which any eye and any printer tells apart by its lightness. */
final class HeatColour {

    private static final int[] LIGHT = {0xe6, 0xf0, 0xf7};
    private static final int[] DARK = {0x08, 0x40, 0x6b};

    /** From here on white is easier to read than black. */
    private static final double TURN = 2.0 / 3;

    private HeatColour() {}

    /** The face for a share from 0, light, to 1, dark. */
    static String of(double share) {
        StringBuilder colour = new StringBuilder("#");
        for (int i = 0; i < LIGHT.length; i++) {
            long part = Math.round(LIGHT[i] + share * (DARK[i] - LIGHT[i]));
            colour.append(Character.forDigit((int) (part / 16), 16)).append(Character.forDigit((int) (part % 16), 16));
        }
        return colour.toString();
    }

    /** The ink to write on it. */
    static String ink(double share) {
        return share > TURN ? Svg.PAPER : "#000000";
    }
}
