package org.ullage.reference;

import java.util.Optional;

/** A calculation that is to be checked against the reference cases. */
@FunctionalInterface
public interface ImplementationUnderTest {

    /**
     * Answers a question, or leaves it.
     *
     * @param question what is asked, with its inputs
     * @return the answer, or empty if this implementation does not work out such things; an empty answer neither passes nor
     *     fails
     * @throws IllegalArgumentException (or a subclass) to refuse inputs that must not be worked with; for some cases that is the
     *     right answer
     */
    Optional<Answer> answer(Question question);
}
