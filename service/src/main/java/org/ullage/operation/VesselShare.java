package org.ullage.operation;

import java.io.Serializable;
import org.ullage.quantity.Volume;

/**
 * What one vessel of several holds. Immutable.
 *
 * @param vessel its name
 * @param water water in it
 */
public record VesselShare(String vessel, Volume water) implements Serializable {}
