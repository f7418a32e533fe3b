/** How the commands read a file that was named on the command line. */
@NullMarked
package org.ullage.examples.file;

import org.jspecify.annotations.NullMarked;
