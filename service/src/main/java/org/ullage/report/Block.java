package org.ullage.report;

import java.io.Serializable;

/** Something that stands on a page. Immutable. */
public sealed interface Block extends Serializable
        permits Heading, Paragraph, BulletList, Table, CautionList, Preformatted, Chart {

    /**
     * Writes itself in the way of a medium.
     *
     * @param medium what writes
     */
    void writeTo(Medium medium);
}
