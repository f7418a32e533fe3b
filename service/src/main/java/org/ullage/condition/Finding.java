package org.ullage.condition;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/**
 * What a sample says in one respect. Immutable.
 *
 * @param subject what was looked at, with its value
 * @param verdict what it calls for
 * @param meaning why, for people
 * @param source where that is said
 * @param decidedBy the limit that decides, or null where no limit was needed
 * @param judgements what every limit says that applies, so that a contradiction shows
 */
public record Finding(
        String subject,
        Verdict verdict,
        String meaning,
        Source source,
        @Nullable SampleLimit decidedBy,
        List<Judgement> judgements)
        implements Serializable {

    /**
     * Copies the judgements.
     *
     * @param subject what was looked at
     * @param verdict what it calls for
     * @param meaning why
     * @param source where that is said
     * @param decidedBy the limit that decides, or null
     * @param judgements what every limit says
     */
    public Finding {
        judgements = List.copyOf(judgements);
    }

    static Finding plain(String subject, Verdict verdict, String meaning, Source source) {
        return new Finding(subject, verdict, meaning, source, null, List.of());
    }

    /**
     * Whether the limits that apply disagree on this value.
     *
     * @return whether they give more than one verdict
     */
    public boolean isContradicted() {
        return judgements.stream().map(Judgement::verdict).distinct().count() > 1;
    }

    /**
     * The finding for people, a line for it and, where sources disagree, one for each.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        StringBuilder text =
                new StringBuilder(subject + " -> " + verdict.word() + ": " + meaning + " " + source + "\n");
        if (isContradicted()) {
            text.append("  the sources disagree; the strictest decides unless the fluid's own data sheet is given:\n");
            judgements.forEach(
                    judgement -> text.append("  - ").append(judgement.text()).append('\n'));
        }
        return text.toString();
    }
}
