package org.ullage.condition;

import java.io.Serializable;

/**
 * What one limit says of one value. Immutable.
 *
 * @param limit the limit
 * @param verdict what it says
 */
public record Judgement(SampleLimit limit, Verdict verdict) implements Serializable {

    /**
     * The judgement for people.
     *
     * @return such as {@code replace: at least 7 (reinhibit or replace below) [PUBLISHED] ...}
     */
    public String text() {
        return verdict.word() + ": " + limit.range() + " (" + limit.meaning() + ") " + limit.source();
    }
}
