package org.ullage.fluids;

import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Water at one atmosphere by the rational polynomial of Kell (1975). */
final class KellWater extends WaterModel {

    private static final long serialVersionUID = 1L;

    /** a0 to a5 of the numerator, then b. */
    private static final double[] C = NumberTable.read("kell-1975.tsv").numbers("value");

    private static final double CELSIUS_ZERO = Temperature.celsius(0).si();

    KellWater() {
        super(
                "Kell 1975",
                Source.secondHand(
                        "G. S. Kell, Density, thermal expansivity, and compressibility of liquid water from 0 to 150 degC,"
                                + " J. Chem. Eng. Data 20 (1975) 97-105",
                        "eq. 16",
                        "five open-source texts whose digits agree"),
                Temperature.celsius(0),
                Temperature.celsius(150),
                Units.CELSIUS);
    }

    @Override
    public boolean isCompressible() {
        return false;
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        double t = kelvins - CELSIUS_ZERO;
        double numerator = C[0] + t * (C[1] + t * (C[2] + t * (C[3] + t * (C[4] + t * C[5]))));
        return (1 + C[6] * t) / numerator;
    }

    private Object readResolve() {
        return Water.KELL_1975;
    }
}
