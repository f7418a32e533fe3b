package org.ullage.report;

/**
 * A heading below the title of the page. Immutable.
 *
 * @param text what follows
 * @param isSubsection whether it stands below another heading
 */
public record Heading(String text, boolean isSubsection) implements Block {

    /**
     * Begins a part of the page.
     *
     * @param text what follows
     * @return the heading
     */
    public static Heading section(String text) {
        return new Heading(text, false);
    }

    /**
     * Begins a part of a section.
     *
     * @param text what follows
     * @return the heading
     */
    public static Heading subsection(String text) {
        return new Heading(text, true);
    }

    @Override
    public void writeTo(Medium medium) {
        medium.heading(this);
    }
}
