package org.ullage.examples.size;

import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.quantity.UnitSystem;

/** One loop of a file, for the commands that look at one. */
public final class FoundLoop {

    private final LoopCase loop;

    FoundLoop(LoopCase loop) {
        this.loop = loop;
    }

    /**
     * Its id.
     *
     * @return as it stands in the file
     */
    public String id() {
        return loop.line().id();
    }

    /**
     * The method its line names.
     *
     * @return the method
     */
    public Method method() {
        return loop.method();
    }

    /**
     * What is to be sized.
     *
     * @return the job
     */
    public SizingJob job() {
        return loop.job();
    }

    /**
     * The system its contents are written in.
     *
     * @return metric or inch-pound
     */
    public UnitSystem system() {
        return loop.units().system();
    }

    /**
     * Sizes its vessel.
     *
     * @param by the method
     * @return the answer
     * @throws IllegalArgumentException if the method refuses the loop; the message names the method and the columns
     */
    public Sizing size(Method by) {
        try {
            return by.size(loop.job());
        } catch (IllegalArgumentException refusal) {
            throw new IllegalArgumentException(
                    by.name() + " refuses loop \"" + id() + "\": " + Refusal.text(loop, by, refusal), refusal);
        }
    }
}
