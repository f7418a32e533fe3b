package org.ullage.quantity;

/** The two families of units the trade prints in. Any input may be in either; this chooses the output. */
public enum UnitSystem {
    /** Metric: L, bar, degC, m, kg, kW, N. */
    SI,
    /** Inch-pound: US gal, psi, degF, ft, lb, Btu/h, lbf. */
    IP
}
