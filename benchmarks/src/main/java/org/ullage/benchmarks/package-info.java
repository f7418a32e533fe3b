/** JMH benchmarks of the calculation path against named yardsticks. See benchmarks/README.md for the command and the table. */
@NullMarked
package org.ullage.benchmarks;

import org.jspecify.annotations.NullMarked;
