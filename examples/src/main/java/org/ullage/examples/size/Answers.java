package org.ullage.examples.size;

import java.io.IOException;
import org.ullage.method.Sizing;

/** Where the answers to a file go, one at a time. */
interface Answers {

    /** Adds an answer. Nothing is printed if a number of it cannot be shown. */
    void answer(LoopCase loop, Sizing sizing) throws IOException;

    /** Adds a refusal. */
    void refuse(String id, String method, String error) throws IOException;

    /** Ends the sheet. */
    void end() throws IOException;
}
