/** What the commands share: how an answer is printed, how a refusal ends a command, and how a loop of a file is named. */
@NullMarked
package org.ullage.examples.command;

import org.jspecify.annotations.NullMarked;
