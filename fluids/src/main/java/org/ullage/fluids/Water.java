package org.ullage.fluids;

import org.ullage.loop.LoopFluid;

/**
 * Plain water by three models. Take {@link #IAPWS_IF97} unless an older calculation has to be repeated with the data it was made
 * with. All are immutable and safe for many threads.
 *
 * <table>
 * <caption>The models side by side</caption>
 * <tr><th>model</th><th>temperature</th><th>pressure</th><th>specific volume against IAPWS-IF97</th></tr>
 * <tr><td>{@link #IAPWS_IF97}</td><td>0 to 350 degC</td><td>vapour pressure to 100 MPa</td><td></td></tr>
 * <tr><td>{@link #KELL_1975}</td><td>0 to 150 degC</td><td>ignored, 1 atm</td>
 *     <td>within 12 ppm to 100 degC, 40 ppm to 150 degC, both at 1 atm</td></tr>
 * <tr><td>{@link #SATURATED_TABLE}</td><td>40 to 300 degF</td><td>ignored, saturation</td>
 *     <td>within 15 ppm, both at saturation</td></tr>
 * </table>
 *
 * <p>The vapour pressure of all three is the saturation line of IAPWS-IF97.
 */
public final class Water {

    /**
     * Water by the IAPWS industrial formulation of 1997, region 1, and the model to take by default. It answers from 0 degC to
     * 350 degC and from the vapour pressure to 100 MPa, and refuses everything else, steam included, with {@link
     * org.ullage.quantity.OutOfRangeException}.
     *
     * @see Iapws97
     */
    public static final LoopFluid IAPWS_IF97 = new Iapws97Water();

    /**
     * Water at one atmosphere by the polynomial of Kell (1975), 0 degC to 150 degC. It ignores the pressure: water in a loop at
     * 3 bar is about 90 ppm denser. Above 100 degC it describes metastable liquid at one atmosphere, not the water of a
     * pressurised loop; the difference from saturated water reaches 200 ppm at 150 degC. The temperature is taken as it is
     * used today (ITS-90) where the formula was written for IPTS-68, which costs less than 40 ppm.
     *
     * @see "G. S. Kell, Density, thermal expansivity, and compressibility of liquid water from 0 to 150 degC, J. Chem. Eng.
     *     Data 20 (1975) 97-105, eq. 16"
     */
    public static final LoopFluid KELL_1975 = new KellWater();

    /**
     * Saturated liquid water from a table of specific volume in ft3/lb against degF, as inch-pound handbooks print it, 40 degF
     * to 300 degF. It ignores the pressure. The rows are computed (COMPUTED), not read in a printed steam table. Between rows it
     * follows an Akima spline, which stays within 15 ppm of the formulation the rows were made with; straight lines would be
     * up to 160 ppm high, a natural cubic spline 40 ppm off near the ends.
     */
    public static final LoopFluid SATURATED_TABLE = new SaturatedTableWater();

    private Water() {}
}
