package org.ullage.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text taken apart into number and unit, with every run of white space made one blank.
 *
 * @param number the leading plain decimal number, empty if there is none
 * @param unit the rest
 */
record Written(String number, String unit) {

    /** Includes the no-break spaces that typeset text has between number and unit. */
    private static final Pattern WHITE_SPACE = Pattern.compile("[\\s\\p{Zs}]++");

    /** Possessive throughout, so that no text, however long, makes it slow. */
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+");

    static Written of(String text) {
        String plain = WHITE_SPACE.matcher(text).replaceAll(" ").strip();
        Matcher number = NUMBER.matcher(plain);
        if (!number.lookingAt()) {
            return new Written("", plain);
        }
        return new Written(number.group(), plain.substring(number.end()).strip());
    }
}
