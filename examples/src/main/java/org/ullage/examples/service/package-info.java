/**
 * The programs of the service years: the operating curve of a loop ({@link org.ullage.examples.service.PlotCommand}) and whether its
 * vessel is still good ({@link org.ullage.examples.service.DiagnoseCommand}).
 */
@NullMarked
package org.ullage.examples.service;

import org.jspecify.annotations.NullMarked;
