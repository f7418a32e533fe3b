package org.ullage.operation;

import java.io.Serializable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;

/**
 * One reading on a loop. Immutable.
 *
 * @param pressure at the vessel's connection; a gauge elsewhere is corrected for its height first
 * @param temperature mean temperature of the fluid in the loop
 */
public record Reading(GaugePressure pressure, Temperature temperature) implements Serializable {}
