package org.ullage.loop;

import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Units;

/** Rules of thumb for the contents of single parts by heat output. A plate or data sheet beats them all. */
public enum PowerRule {
    /** Wall-hung condensing boiler, low mass. */
    WALL_HUNG_CONDENSING_BOILER,
    /** Copper fin-tube boiler, low mass. */
    COPPER_FIN_TUBE_BOILER,
    /** Cast iron sectional boiler. */
    CAST_IRON_SECTIONAL_BOILER,
    /** Steel three-pass or fire-tube hot-water boiler. */
    STEEL_FIRE_TUBE_BOILER,
    /** Small-bore pipework alone. */
    SMALL_BORE_PIPEWORK,
    /** Steel panel radiators alone. */
    STEEL_PANEL_RADIATORS,
    /** Low-content radiators alone. */
    LOW_CONTENT_RADIATORS,
    /** The least buffer of an automatically fed solid-fuel boiler under a German ordinance. */
    BUFFER_AUTOMATIC_SOLID_FUEL,
    /** The least buffer of a hand-fed solid-fuel boiler under a German ordinance; 12 L per litre of fuel space if larger. */
    BUFFER_HAND_FED_SOLID_FUEL;

    /**
     * The contents for an output.
     *
     * @param output rated heat output, above zero
     * @return a line for a list
     * @throws OutOfRangeException if the output is zero or negative
     */
    public ContentsItem item(Power output) {
        return ContentsRule.of(this).item(Amount.of(output), Units.KILOWATT.numberOf(output.si()));
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
