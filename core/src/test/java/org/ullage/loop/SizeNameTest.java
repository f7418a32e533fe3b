package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The keys that spellings are brought to; what callers may write is in {@link PipeSizeNameTest}. */
class SizeNameTest {

    @Test
    void rowInInchesIsAlsoFoundByTheBareNumber() {
        assertThat(SizeName.keysOfRow("1-1/2\"")).containsExactly("in:1.5", "n:1.5");
        assertThat(SizeName.keysOfRow("DN 40")).containsExactly("dn:40");
        assertThat(SizeName.keysOfRow("d32")).containsExactly("mm:32");
    }

    @Test
    void textThatIsNoSpellingIsItsOwnKey() {
        assertThat(SizeName.key("Three Quarters")).isEqualTo("three quarters");
    }

    @Test
    void longestSpellingIsStillRead() {
        assertThat(SizeName.key("nps 1234-1234/1234 inches")).isEqualTo("in:1235");
        assertThat(SizeName.key("nps 12345-1234/1234 inches")).isEmpty();
    }
}
