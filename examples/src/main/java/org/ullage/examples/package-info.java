/**
 * Runnable programs on an invented scenario, through the public API only. Start at {@link org.ullage.examples.Ullage}, the
 * command line; its commands stand in the packages below.
 */
@NullMarked
package org.ullage.examples;

import org.jspecify.annotations.NullMarked;
