package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.Arrays;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/** Correlation coefficients of the inputs of a model. Immutable. */
public final class Correlation implements Serializable {

    private static final long serialVersionUID = 1L;

    /** How far below zero rounding may take the smallest eigenvalue of a matrix that is just possible. */
    private static final double ROUNDING = 1e-9;

    private final double[][] coefficients;

    private Correlation(double[][] coefficients) {
        this.coefficients = coefficients;
    }

    /**
     * Takes the coefficients.
     *
     * @param coefficients r_ij in the order of the inputs: a square of numbers from -1 to 1, symmetric, 1 on the diagonal
     * @return the correlation
     * @throws OutOfRangeException if it is none of that, or no inputs can be correlated in this way
     */
    public static Correlation of(double[][] coefficients) {
        int size = coefficients.length;
        double[][] copy = new double[size][];
        for (int i = 0; i < size; i++) {
            copy[i] = coefficients[i].clone();
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                requireCoefficient(copy, i, j);
            }
        }
        double least = Arrays.stream(new EigenDecomposition(MatrixUtils.createRealMatrix(copy)).getRealEigenvalues())
                .min()
                .orElse(0);
        if (least < -ROUNDING) {
            throw new OutOfRangeException(
                    "least eigenvalue of the correlation",
                    String.valueOf(least),
                    "zero or more",
                    "no values can be correlated in this way: check the signs of the coefficients");
        }
        return new Correlation(copy);
    }

    private static void requireCoefficient(double[][] copy, int i, int j) {
        boolean isSquare = copy[i].length == copy.length && copy[j].length == copy.length;
        boolean isRight =
                isSquare && Math.abs(copy[i][j]) <= 1 && copy[i][j] == copy[j][i] && (i != j || copy[i][j] == 1);
        if (!isRight) {
            throw new OutOfRangeException(
                    "correlation coefficient in row " + (i + 1) + ", column " + (j + 1),
                    isSquare ? String.valueOf(copy[i][j]) : "of a row of " + copy[i].length,
                    "from -1 to 1, the same as across the diagonal, 1 on it, in a square of " + copy.length,
                    "check the coefficients and their order");
        }
    }

    /**
     * One coefficient.
     *
     * @param i place of one input
     * @param j place of another
     * @return r_ij, from -1 to 1
     * @throws OutOfRangeException if there is no input at a place
     */
    public double coefficient(int i, int j) {
        requirePlace(i);
        requirePlace(j);
        return coefficients[i][j];
    }

    private void requirePlace(int place) {
        if (place < 0 || place >= coefficients.length) {
            throw new OutOfRangeException(
                    "place of an input",
                    Integer.toString(place),
                    "from 0 to " + (coefficients.length - 1),
                    "count the inputs from 0");
        }
    }

    /**
     * The number of inputs.
     *
     * @return rows of the square
     */
    public int size() {
        return coefficients.length;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Correlation that && Arrays.deepEquals(coefficients, that.coefficients);
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(coefficients);
    }
}
