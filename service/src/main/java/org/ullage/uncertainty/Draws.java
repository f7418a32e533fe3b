package org.ullage.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws of all inputs, a block at a time. Every input has a stream of random numbers of its own, so draw n is the same however many
 * are asked for, and another spread on one input leaves the draws of the others as they were.
 */
final class Draws {

    private static final int LENGTH = 1024;

    /** Draws in a block. */
    static final int BLOCK = LENGTH;

    private final Spread[] spreads;
    private final SplittableRandom[] streams;
    private final double[][] columns;
    private final int[] uncertain;
    private final double[] row;

    Draws(List<ModelInput> inputs, long seed) {
        int size = inputs.size();
        SplittableRandom seeds = new SplittableRandom(seed);
        spreads = new Spread[size];
        streams = new SplittableRandom[size];
        columns = new double[size][];
        row = new double[size];
        int[] places = new int[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            spreads[i] = inputs.get(i).spread();
            streams[i] = new SplittableRandom(seeds.nextLong());
            row[i] = spreads[i].mean();
            if (!spreads[i].isCertain()) {
                columns[i] = new double[BLOCK];
                places[count++] = i;
            }
        }
        uncertain = Arrays.copyOf(places, count);
    }

    void nextBlock() {
        for (int i : uncertain) {
            spreads[i].fill(columns[i], streams[i]);
        }
    }

    /** One draw of the block, in an array that is used again. */
    double[] row(int draw) {
        for (int i : uncertain) {
            row[i] = columns[i][draw];
        }
        return row;
    }
}
