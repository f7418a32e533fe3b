package org.ullage.sharing;

import java.io.Serializable;
import java.util.concurrent.Callable;

/**
 * A question about the yard that is answered anew each time, from instances that all who ask share.
 *
 * @param name what is asked
 * @param answer asks it
 */
record Asking(String name, Callable<? extends Serializable> answer) {

    /** The answer, with every bit of it. */
    Serializable ask() {
        try {
            return answer.call();
        } catch (Exception e) {
            throw new AssertionError(name + " has no answer", e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
