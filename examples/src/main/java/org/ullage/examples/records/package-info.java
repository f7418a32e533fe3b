/**
 * The record program: a service book in JSON, what it says and what is due. The way: {@link org.ullage.examples.records.RecordCommand},
 * {@link org.ullage.examples.records.Json}.
 */
@NullMarked
package org.ullage.examples.records;

import org.jspecify.annotations.NullMarked;
