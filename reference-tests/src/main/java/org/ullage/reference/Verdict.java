package org.ullage.reference;

import java.util.Locale;

/** What a case demands of an implementation. */
public enum Verdict {
    /** The stated figure is right: the answer must meet it within the case's tolerance. */
    AGREES,
    /**
     * The stated figure is wrong or was rounded away from its own rule: the answer must miss it by more than the tolerance and
     * must meet the corrected figure within that one's own tolerance.
     */
    DIFFERS,
    /** The inputs must not be worked with: the implementation must refuse them. */
    REFUSED;

    /**
     * The verdict as written in the case files.
     *
     * @return in lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Verdict ofWord(String word) {
        for (Verdict verdict : values()) {
            if (verdict.word().equals(word)) {
                return verdict;
            }
        }
        throw new IllegalArgumentException("verdict \"" + word + "\" must be agrees, differs or refused");
    }
}
