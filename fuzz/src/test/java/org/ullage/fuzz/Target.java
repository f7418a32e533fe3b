package org.ullage.fuzz;

/** A part of the library that is handed random inputs. */
interface Target {

    /** Short, as it is printed and as a case is named by. */
    String name();

    /** Share of all cases: the quick parts get more. */
    double share();

    /**
     * Draws a case and asks it.
     *
     * @return the answer, which {@link Finite} then looks through; or null if the target has looked through it itself
     * @throws Exception a refusal; anything undocumented is a fault
     */
    Object ask(Draw draw) throws Exception;
}
