/** Fuzzing of the library and the program: all of it is test code, and this page is all that the module's jar holds. */
@NullMarked
package org.ullage.fuzz;

import org.jspecify.annotations.NullMarked;
