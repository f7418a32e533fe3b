/**
 * The choice program: a loop of a file and a catalogue of one's own in, the vessels to buy out. The way: {@link
 * org.ullage.examples.choose.ChooseCommand}, {@link org.ullage.examples.choose.CatalogueFile}, {@link
 * org.ullage.examples.choose.ChoiceSheet}.
 */
@NullMarked
package org.ullage.examples.choose;

import org.jspecify.annotations.NullMarked;
