/**
 * The demonstration: one invented building, from the job to the vessel, a class for each section of the page. Start at {@link
 * org.ullage.examples.demo.DemoPage}.
 */
@NullMarked
package org.ullage.examples.demo;

import org.jspecify.annotations.NullMarked;
