/**
 * The sizing program: a CSV file of loops in, a CSV table of vessels out. The way of a line: {@link
 * org.ullage.examples.size.LogicalLines}, {@link org.ullage.examples.size.Header}, {@link org.ullage.examples.size.LoopLine},
 * {@link org.ullage.examples.size.LoopReader}, {@link org.ullage.examples.size.SizeRun}, {@link
 * org.ullage.examples.size.AnswerSheet}.
 */
@NullMarked
package org.ullage.examples.size;

import org.jspecify.annotations.NullMarked;
