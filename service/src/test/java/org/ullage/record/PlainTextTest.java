package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class PlainTextTest {

    @Example
    void dropsWhatCannotBeSeen() {
        assertThat(PlainText.of(" a\t b\n\u0000c\u202E\u200Fd\u2028e\uFEFF ")).isEqualTo("a b cd e");
        assertThat(PlainText.of("Z\u00FCrich \u05D0")).isEqualTo("Z\u00FCrich \u05D0");
    }

    @Example
    void breaksAtBlanksAndInsideLongWords() {
        assertThat(PlainText.wrapped("one two three", 7)).containsExactly("one two", "three");
        assertThat(PlainText.wrapped("one two three", 6)).containsExactly("one", "two", "three");
        assertThat(PlainText.wrapped("abcdefgh ij", 4)).containsExactly("abcd", "efgh", "ij");
        assertThat(PlainText.wrapped("abcd efgh", 4)).containsExactly("abcd", "efgh");
        assertThat(PlainText.wrapped("", 4)).containsExactly("");
    }

    @Example
    void countsWideLettersTwice() {
        assertThat(PlainText.wrapped("\u6691\u623F\u6691\u623F\u6691", 4))
                .containsExactly("\u6691\u623F", "\u6691\u623F", "\u6691");
        // full-width letters and the ideographic comma
        assertThat(PlainText.wrapped("\uFF21\u3001\uFF22", 4)).containsExactly("\uFF21\u3001", "\uFF22");
        assertThat(PlainText.cut("\uD83D\uDE00\uD83D\uDE00\uD83D\uDE00", 5)).isEqualTo("\uD83D\uDE00...");
    }

    @Example
    void cutsWithThreePoints() {
        assertThat(PlainText.cut("abcdef", 6)).isEqualTo("abcdef");
        assertThat(PlainText.cut("abcdefg", 6)).isEqualTo("abc...");
    }

    @Property
    void staysWithinTheWidthAndLosesNoLetter(@ForAll String text, @ForAll @IntRange(min = 4, max = 60) int width) {
        assertThat(PlainText.cut(text, width)).hasSizeLessThanOrEqualTo(width);
        assertThat(PlainText.wrapped(text, width))
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(width));
        assertThat(String.join("", PlainText.wrapped(text, width)).replace(" ", ""))
                .isEqualTo(PlainText.of(text).replace(" ", ""));
    }
}
