package org.ullage.fluids;

/** Specific volume of region 1 term by term as IAPWS R7-97(2012) prints it, the yardstick of the grouped kernel. */
final class Iapws97PublishedSum {

    private static final NumberTable TABLE_2 = NumberTable.read("iapws-r7-97-region-1.tsv");
    private static final double[] I = TABLE_2.numbers("I");
    private static final double[] J = TABLE_2.numbers("J");
    private static final double[] N = TABLE_2.numbers("n");

    private Iapws97PublishedSum() {}

    static double specificVolume(double kelvins, double pascals) {
        double pi = pascals / 16.53e6;
        double tau = 1386 / kelvins;
        double gammaPi = 0;
        for (int k = 0; k < N.length; k++) {
            gammaPi -= N[k] * I[k] * Math.pow(7.1 - pi, I[k] - 1) * Math.pow(tau - 1.222, J[k]);
        }
        return pi * gammaPi * 461.526 * kelvins / pascals;
    }
}
