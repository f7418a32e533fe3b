package org.ullage.examples.size;

import org.ullage.method.Method;
import org.ullage.method.SizingJob;

/**
 * One line, read.
 *
 * @param line as it stands in the file
 * @param method the method it names
 * @param job what is to be sized
 * @param units the units of its answer
 */
record LoopCase(LoopLine line, Method method, SizingJob job, AnswerUnits units) {}
