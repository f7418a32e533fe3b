/**
 * The take-off program: a CSV list of pipes and items in, their contents and the total out. The way of a file: {@link
 * org.ullage.examples.file.SheetFile}, {@link org.ullage.examples.contents.TakeOffLine}, {@link
 * org.ullage.examples.contents.TakeOffSheet}.
 */
@NullMarked
package org.ullage.examples.contents;

import org.jspecify.annotations.NullMarked;
