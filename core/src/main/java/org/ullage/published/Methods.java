package org.ullage.published;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ullage.method.Method;
import org.ullage.quantity.OutOfRangeException;

/**
 * The published methods that ship with the library, each a set of conventions with its sources. {@link #named} finds one by the name
 * that files use, {@link #all} lists them.
 *
 * <table>
 * <caption>Where to look</caption>
 * <tr><th>region</th><th>methods</th></tr>
 * <tr><td>North America</td><td>{@link #ASHRAE}, {@link #ASME_IV}, {@link #IRC_M2003}, {@link #PRACTICE_US}</td></tr>
 * <tr><td>Europe</td><td>{@link #EN_12828}, {@link #EN_12828_2003}</td></tr>
 * <tr><td>Germany</td><td>{@link #DIN_4807}</td></tr>
 * <tr><td>Italy</td><td>{@link #RACCOLTA_R}</td></tr>
 * <tr><td>Spain</td><td>{@link #UNE_100155}, {@link #UNE_100155_MARGIN}, {@link #UNE_100155_CHILLED}, {@link #PRACTICE_ES}</td></tr>
 * <tr><td>United Kingdom</td><td>{@link #BS_5449}, {@link #BS_5449_BELOW_88}, {@link #BS_7074}</td></tr>
 * <tr><td>Poland, Czechia, Hungary</td><td>{@link #PN_B_02414}, {@link #CSN_06_0830}, {@link #PRACTICE_HU}</td></tr>
 * <tr><td>Netherlands, Belgium, France</td><td>{@link #PRACTICE_NL}, {@link #PRACTICE_NL_1_PERCENT}, {@link #PRACTICE_BE},
 * {@link #DTU_65_11}</td></tr>
 * <tr><td>open tanks</td><td>{@link #PRACTICE_FR_OPEN}, {@link #PRACTICE_HU_OPEN}, {@link #PRACTICE_CN_OPEN},
 * {@link #PRACTICE_CN_OPEN_HEATING}; {@link #ASHRAE} has them too</td></tr>
 * <tr><td>solar loops that boil</td><td>{@link #IDAE_022}, {@link #UFC_3_440_01}, {@link #EN_12977_1}, {@link
 * #PRACTICE_FR_SOLAR}</td></tr>
 * <tr><td>this library's own</td><td>{@link #MASS_BALANCE}</td></tr>
 * </table>
 */
public final class Methods {

    /** ASHRAE Handbook: real densities, pipe term, no reserve; diaphragm, bladder, closed plain steel and open tanks. */
    public static final Method ASHRAE = AshraeMethod.METHOD;

    /** ASME BPVC Section IV and the mechanical codes after it: a straight line for hot water in steel. */
    public static final Method ASME_IV = AsmeMethod.METHOD;

    /**
     * IRC table M2003.2 by its formula, for 195 degF and 12/30 psig whatever the loop's own: refused for a harder loop, with a warning
     * for an easier one or above 100 gal. Needs the contents alone.
     */
    public static final Method IRC_M2003 = IrcM2003Method.METHOD;

    /** North American practice in trade-journal articles of 2003: real densities, 5 psi at the top, 5 psi below the relief setting, no pipe credit. */
    public static final Method PRACTICE_US = NorthAmericanPracticeMethod.METHOD;

    /** EN 12828 (2012+A1:2014), Annex D: expansion table, water reserve, margins on both pressures. */
    public static final Method EN_12828 = En12828Method.METHOD;

    /** EN 12828 (2003), superseded: 0.3 bar at the top, at least 0.7 bar, the temperature of the safety device. */
    public static final Method EN_12828_2003 = En12828Of2003Method.METHOD;

    /** DIN 4807-2 and VDI 4708: as EN 12828 with real expansion and the vapour pressure added. Remembered. */
    public static final Method DIN_4807 = Din4807Method.METHOD;

    /** INAIL Raccolta R (2009): expansion line at the safety temperature, relief setting without margin. */
    public static final Method RACCOLTA_R = RaccoltaRMethod.METHOD;

    /** UNE 100155:2004: coefficient net of steel pipe, relief setting without margin, at least 1.5 bar absolute; 30 to 120 degC. */
    public static final Method UNE_100155 = Une100155Method.METHOD;

    /** UNE 100155:2004 with the lower of 0.9 x setting and setting - 0.35 bar as final pressure. Remembered. */
    public static final Method UNE_100155_MARGIN = Une100155Method.MARGIN;

    /** UNE 100155:2004 for chilled water: the coefficient not below 0.004. Remembered. */
    public static final Method UNE_100155_CHILLED = Une100155Method.CHILLED;

    /** Spanish vocational course: 1.2 x gross expansion from 4 degC. */
    public static final Method PRACTICE_ES = SpanishCourseMethod.METHOD;

    /** BS 5449 multipliers: 4.9 % whatever the temperature, 0.35 bar below the relief setting, static head without margin. */
    public static final Method BS_5449 = Bs5449Method.METHOD;

    /** BS 5449 multipliers x 0.8, for flow temperatures below 88 degC. */
    public static final Method BS_5449_BELOW_88 = Bs5449Method.BELOW_88;

    /** BS 7074: real expansion, 0.35 bar below the relief setting, static head without margin. Remembered. */
    public static final Method BS_7074 = Bs7074Method.METHOD;

    /** PN-B-02414:1999: real expansion from 10 degC x 1.1, static head + 0.2 bar, relief setting. Remembered. */
    public static final Method PN_B_02414 = PnB02414Method.METHOD;

    /** CSN 06 0830: real expansion from 10 degC x 1.3, static head x 1.1, relief setting. Remembered. */
    public static final Method CSN_06_0830 = Csn060830Method.METHOD;

    /** Hungarian practice: charge static head + 0.3 bar, filled 0.3 bar above it. */
    public static final Method PRACTICE_HU = HungarianPracticeMethod.METHOD;

    /** Dutch practice, classic: expansion at the mean temperature, 25 % on the vessel. Not for chilled water. */
    public static final Method PRACTICE_NL = DutchMethods.CLASSIC;

    /** Dutch practice, newer: highest temperature, reserve 1 % of the contents, 0.5 bar below the relief setting. */
    public static final Method PRACTICE_NL_1_PERCENT = DutchMethods.ONE_PERCENT;

    /** Belgian practice: real expansion, reserve 1 % of the contents, margins of EN 12828. */
    public static final Method PRACTICE_BE = BelgianPracticeMethod.METHOD;

    /** NF DTU 65.11: real expansion, static head + 0.3 bar, relief setting. Remembered. */
    public static final Method DTU_65_11 = Dtu6511Method.METHOD;

    /** Open tank, French course: real expansion at the mean temperature. */
    public static final Method PRACTICE_FR_OPEN = OpenTankMethods.FRANCE;

    /** Open tank, Hungarian rule: 0.00043 per K from 10 degC to the mean temperature. */
    public static final Method PRACTICE_HU_OPEN = OpenTankMethods.HUNGARY;

    /** Open tank, Chinese rule for air-conditioning: 0.0006 per K between lowest and highest temperature. */
    public static final Method PRACTICE_CN_OPEN = OpenTankMethods.CHINA;

    /** Open tank, Chinese heating factors by flow temperature (95, 110, 130 degC) at 70 degC return. */
    public static final Method PRACTICE_CN_OPEN_HEATING = OpenTankMethods.CHINA_HEATING;

    /** IDAE guide 022, solar loops: 8.5 % of the contents, collectors and the pipe above them, 3 L. */
    public static final Method IDAE_022 = SolarMethods.IDAE;

    /** UFC 3-440-01, solar loops: collectors and the pipe at or above them, nothing else; charge below the fill pressure. */
    public static final Method UFC_3_440_01 = SolarMethods.UFC;

    /** EN 12977-1 as read in a professional sheet, solar loops: 8.5 % of the contents, the collectors, 3 L. */
    public static final Method EN_12977_1 = SolarMethods.EN_12977;

    /** A French sheet for solar loops: 8.5 % of the contents, 1.1 times the collectors, 3 L. */
    public static final Method PRACTICE_FR_SOLAR = SolarMethods.FRANCE;

    /** Mass balance: this library's own model, the yardstick for the rest. */
    public static final Method MASS_BALANCE = MassBalanceMethod.METHOD;

    private static final List<Method> ALL = List.of(
            ASHRAE,
            ASME_IV,
            IRC_M2003,
            PRACTICE_US,
            EN_12828,
            EN_12828_2003,
            DIN_4807,
            RACCOLTA_R,
            UNE_100155,
            UNE_100155_MARGIN,
            UNE_100155_CHILLED,
            PRACTICE_ES,
            BS_5449,
            BS_5449_BELOW_88,
            BS_7074,
            PN_B_02414,
            CSN_06_0830,
            PRACTICE_HU,
            PRACTICE_NL,
            PRACTICE_NL_1_PERCENT,
            PRACTICE_BE,
            DTU_65_11,
            PRACTICE_FR_OPEN,
            PRACTICE_HU_OPEN,
            PRACTICE_CN_OPEN,
            PRACTICE_CN_OPEN_HEATING,
            IDAE_022,
            UFC_3_440_01,
            EN_12977_1,
            PRACTICE_FR_SOLAR,
            MASS_BALANCE);

    private Methods() {}

    /**
     * Every method.
     *
     * @return in the order of this page
     */
    public static List<Method> all() {
        return ALL;
    }

    /**
     * Finds a method by its short name.
     *
     * @param name such as {@code en-12828}; case does not matter
     * @return the method
     * @throws OutOfRangeException if no method has that name
     */
    public static Method named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(method -> method.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new OutOfRangeException(
                        "method",
                        "\"" + name.strip() + "\"",
                        "one of " + ALL.stream().map(Method::name).collect(Collectors.joining(", ")),
                        "write the standard's name in lower case"));
    }
}
