package org.ullage.loop;

import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/** Rules of thumb for the contents of single parts by the piece. A plate or data sheet beats them all. */
public enum PieceRule {
    /** One rib of a cast iron or steel ribbed radiator: the range covers heights and depths. */
    RADIATOR_RIB,
    /** A typical single steel panel radiator, whole. */
    STEEL_PANEL_RADIATOR,
    /** A small steel panel radiator, whole. */
    SMALL_STEEL_PANEL_RADIATOR,
    /** A large steel panel radiator, whole. */
    LARGE_STEEL_PANEL_RADIATOR,
    /** A whole domestic system by its radiator panels, pipes included; a double panel counts as two. */
    PANEL_WITH_PIPES,
    /** A domestic thermal store, at the most its rule gives. */
    DOMESTIC_THERMAL_STORE,
    /** The heating coil in a hot-water cylinder. */
    CYLINDER_COIL,
    /** A residential or light commercial cast iron boiler of any output, whole. */
    RESIDENTIAL_CAST_IRON_BOILER;

    /**
     * The contents of a number of pieces.
     *
     * @param pieces 1 or more
     * @return a line for a list
     * @throws OutOfRangeException if there is no piece
     */
    public ContentsItem item(int pieces) {
        return ContentsRule.of(this).item(Amount.of(pieces), pieces);
    }

    /**
     * Where the rule comes from.
     *
     * @return the source
     */
    public Source source() {
        return ContentsRule.of(this).source();
    }
}
