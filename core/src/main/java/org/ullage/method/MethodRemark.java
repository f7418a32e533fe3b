package org.ullage.method;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/**
 * What a method says about itself with an answer: always, or when the job is of a certain kind. Immutable.
 *
 * @param when when it is said
 * @param caution what is said
 */
public record MethodRemark(Condition when, Caution caution) implements Serializable {

    /** When a remark is made. */
    @FunctionalInterface
    public interface Condition extends Serializable {

        /**
         * Whether the remark belongs to a job.
         *
         * @param job what is to be sized
         * @return true if it is to be made
         */
        boolean holds(SizingJob job);
    }

    /**
     * Said with every answer.
     *
     * @param text what is said
     * @param source where it comes from
     * @return the remark
     */
    public static MethodRemark always(String text, Source source) {
        return new MethodRemark(job -> true, new Caution(text, source));
    }

    /**
     * Said where the highest operating temperature is given and above a limit.
     *
     * @param limit the limit
     * @param text what is said
     * @param source where it comes from
     * @return the remark
     */
    public static MethodRemark above(Temperature limit, String text, Source source) {
        return new MethodRemark(
                job -> {
                    Temperature hot = job.temperatures().hot();
                    return hot != null && hot.compareTo(limit) > 0;
                },
                new Caution(text, source));
    }

    /**
     * Said where the highest operating temperature is given and below a limit.
     *
     * @param limit the limit
     * @param text what is said
     * @param source where it comes from
     * @return the remark
     */
    public static MethodRemark below(Temperature limit, String text, Source source) {
        return new MethodRemark(
                job -> {
                    Temperature hot = job.temperatures().hot();
                    return hot != null && hot.compareTo(limit) < 0;
                },
                new Caution(text, source));
    }

    /**
     * Said where the contents are above a limit.
     *
     * @param limit the limit
     * @param text what is said
     * @param source where it comes from
     * @return the remark
     */
    public static MethodRemark above(Volume limit, String text, Source source) {
        return new MethodRemark(job -> job.loop().contents().compareTo(limit) > 0, new Caution(text, source));
    }

    /**
     * Said with every answer of a rule whose document was not opened.
     *
     * @param source where it comes from
     * @return the remark
     */
    public static MethodRemark remembered(Source source) {
        return always(
                "This rule is remembered, its document was not opened: check it there before anything depends on it.",
                source);
    }

    /**
     * Said with every answer of a rule that is known from courses or the trade press only.
     *
     * @param source where it comes from
     * @return the remark
     */
    public static MethodRemark practice(Source source) {
        return always(
                "This rule is national practice as courses and the trade press print it, not a standard: it binds nobody and"
                        + " parts of it are not stated.",
                source);
    }
}
