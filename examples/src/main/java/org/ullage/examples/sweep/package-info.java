/** The command {@code sweep}: how the vessel of one loop hangs on two of its inputs. */
@NullMarked
package org.ullage.examples.sweep;

import org.jspecify.annotations.NullMarked;
