package org.ullage.fluids;

/** A coefficient table of IAPWS R7-97(2012). Its rows are numbered from one, and so are the coefficients in the equations. */
final class Iapws97Table {

    private final NumberTable table;

    private Iapws97Table(NumberTable table) {
        this.table = table;
    }

    static Iapws97Table read(String resource) {
        return new Iapws97Table(NumberTable.read(resource));
    }

    /** A column with an unused zero put before it, so that coefficient 34 of the release stands at index 34. */
    double[] column(String name) {
        double[] numbers = new double[table.size() + 1];
        System.arraycopy(table.numbers(name), 0, numbers, 1, table.size());
        return numbers;
    }
}
