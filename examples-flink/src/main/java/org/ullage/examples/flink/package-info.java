/**
 * A portfolio of loops, each sized with its uncertainty: by a plain loop and on Apache Flink, with the same function for each line. Start at
 * {@link org.ullage.examples.flink.PortfolioOnFlink}.
 */
@NullMarked
package org.ullage.examples.flink;

import org.jspecify.annotations.NullMarked;
