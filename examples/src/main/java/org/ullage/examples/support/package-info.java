/**
 * The support program: a CSV list of hung vessels in, their weights and checks out. The way of a file: {@link
 * org.ullage.examples.file.SheetFile}, {@link org.ullage.examples.support.SupportLine}, {@link
 * org.ullage.examples.support.SupportSheet}.
 */
@NullMarked
package org.ullage.examples.support;

import org.jspecify.annotations.NullMarked;
