package org.ullage.sizing;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * How the required volume of one loop hangs on two of its inputs: a grid of sizings by one method, one input down, the other across.
 * What the method refuses is a gap with its reason. Immutable.
 */
public final class SizingSweep implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Method method;
    private final SweepAxis down;
    private final SweepAxis across;
    private final boolean isTurned;
    private final SizingBatch[] batches;
    private final double[][] volumes;

    /** A batch for each fluid if there are several, else for each row of the grid. */
    private SizingSweep(Method method, SizingJob job, SweepAxis down, SweepAxis across) {
        this.method = method;
        this.down = down;
        this.across = across;
        this.isTurned = across instanceof FluidAxis;
        SweepAxis outer = isTurned ? across : down;
        NumberAxis inner = (NumberAxis) (isTurned ? down : across);
        this.batches = IntStream.range(0, outer.size())
                .mapToObj(index -> batch(method, job, outer, index, inner))
                .toArray(SizingBatch[]::new);
        this.volumes = Arrays.stream(batches).map(SizingSweep::volumes).toArray(double[][]::new);
    }

    private static SizingBatch batch(Method method, SizingJob job, SweepAxis outer, int index, NumberAxis inner) {
        if (outer instanceof NumberAxis numbers) {
            double[] same = new double[inner.size()];
            Arrays.fill(same, numbers.values().get(index).si());
            return SizingBatch.of(method, job)
                    .varying(inner.input(), inner.numbers())
                    .varying(numbers.input(), same);
        }
        LoopFluid fluid = ((FluidAxis) outer).values().get(index);
        return SizingBatch.of(method, job.with(job.loop().refilledWith(fluid))).varying(inner.input(), inner.numbers());
    }

    private static double[] volumes(SizingBatch batch) {
        double[] volumes = new double[batch.rows()];
        batch.requiredVolumes(volumes);
        return volumes;
    }

    /**
     * Sizes the grid.
     *
     * @param method the method
     * @param job what all cells have in common; the two inputs need not be in it
     * @param down the input that varies from row to row
     * @param across the input that varies from column to column
     * @return the grid
     * @throws OutOfRangeException if both axes vary the same input, or one has no effect: a static head beside a cold pressure, a pressure
     *     with an open tank
     */
    public static SizingSweep of(Method method, SizingJob job, SweepAxis down, SweepAxis across) {
        if (down.words().equals(across.words())) {
            throw new OutOfRangeException(
                    "inputs of a sweep", down.words() + " twice", "two different ones", "vary another input");
        }
        requireEffect(job, down, across);
        requireEffect(job, across, down);
        return new SizingSweep(method, job, down, across);
    }

    private static void requireEffect(SizingJob job, SweepAxis axis, SweepAxis other) {
        if (!(axis instanceof NumberAxis numbers)) {
            return;
        }
        switch (numbers.input()) {
            case CONTENTS, COLD_TEMPERATURE, HOT_TEMPERATURE -> {}
            case STATIC_HEAD, COLD_PRESSURE, CHARGE, FINAL_PRESSURE, RELIEF_SETTING -> {
                requireClosed(job, numbers);
                requireHeadCounts(job, numbers, other);
            }
        }
    }

    private static void requireClosed(SizingJob job, NumberAxis axis) {
        if (job.vessel().kind() == VesselKind.OPEN) {
            throw new OutOfRangeException(
                    "input of a sweep",
                    axis.words(),
                    "contents, a temperature or the fluid for an open tank, which has no pressures of its own",
                    "vary another input");
        }
    }

    private static void requireHeadCounts(SizingJob job, NumberAxis axis, SweepAxis other) {
        boolean hasColdPressure = job.pressures().coldPressure() != null
                || (other instanceof NumberAxis numbers && numbers.input() == SizingInput.COLD_PRESSURE);
        if (axis.input() == SizingInput.STATIC_HEAD && hasColdPressure) {
            throw new OutOfRangeException(
                    "input of a sweep",
                    axis.words(),
                    "another one beside a cold pressure, which is taken as it is",
                    "vary the cold pressure");
        }
    }

    /**
     * The method.
     *
     * @return as given
     */
    public Method method() {
        return method;
    }

    /**
     * The input that varies from row to row.
     *
     * @return as given
     */
    public SweepAxis down() {
        return down;
    }

    /**
     * The input that varies from column to column.
     *
     * @return as given
     */
    public SweepAxis across() {
        return across;
    }

    /**
     * The required volume of a cell.
     *
     * @param row from 0
     * @param column from 0
     * @return the volume, or empty where the method refuses
     * @throws OutOfRangeException if there is no such cell
     */
    public Optional<Volume> requiredVolume(int row, int column) {
        requireCell(row, column);
        double volume = isTurned ? volumes[column][row] : volumes[row][column];
        return volume == SizingBatch.REFUSED ? Optional.empty() : Optional.of(Volume.ofSi(volume));
    }

    /**
     * Why the method refuses a cell.
     *
     * @param row from 0
     * @param column from 0
     * @return the refusal in words, or empty if there is an answer
     * @throws OutOfRangeException if there is no such cell
     */
    public Optional<String> refusal(int row, int column) {
        requireCell(row, column);
        return isTurned ? batches[column].refusal(row) : batches[row].refusal(column);
    }

    /**
     * The sizing of a cell, with its workings.
     *
     * @param row from 0
     * @param column from 0
     * @return the sizing
     * @throws OutOfRangeException if there is no such cell, or the method refuses it
     * @throws MissingInputException if an input is missing
     */
    public Sizing sizing(int row, int column) {
        requireCell(row, column);
        return method.size(isTurned ? batches[column].job(row) : batches[row].job(column));
    }

    /**
     * How many cells the method refuses.
     *
     * @return zero or more
     */
    public int refused() {
        return (int) Arrays.stream(volumes)
                .flatMapToDouble(Arrays::stream)
                .filter(volume -> volume == SizingBatch.REFUSED)
                .count();
    }

    private void requireCell(int row, int column) {
        requireIndex("row of the sweep", row, down.size());
        requireIndex("column of the sweep", column, across.size());
    }

    private static void requireIndex(String what, int index, int size) {
        if (index < 0 || index >= size) {
            throw new OutOfRangeException(what, String.valueOf(index), "0 to " + (size - 1), "count from 0");
        }
    }
}
