package org.ullage.sizing;

import java.io.Serializable;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ullage.method.Method;
import org.ullage.method.SizingFunction;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.method.VariedJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * Many sizings by one method at once: a job, and columns of numbers for the inputs that vary from row to row. Every answer is the one of
 * {@link Method#size} to the last bit; a closed vessel costs little more than the bare arithmetic and no memory. Immutable.
 *
 * <pre>{@code
 * SizingBatch batch = SizingBatch.of(Methods.ASHRAE, job)
 *         .varying(SizingInput.CONTENTS, cubicMetres)
 *         .varying(SizingInput.HOT_TEMPERATURE, kelvins);
 * double[] volumes = new double[batch.rows()];
 * int refused = batch.requiredVolumes(volumes);
 * }</pre>
 */
public final class SizingBatch implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int INPUTS = SizingInput.values().length;

    private static final int NO_VOLUME = -1;

    /** What stands in place of the volume, which is never negative, where the method refuses; {@link #refusal} says why. */
    public static final double REFUSED = NO_VOLUME;

    private final Method method;
    private final SizingJob job;
    private final EnumMap<SizingInput, double[]> columns;
    private final transient VariedJob varied;
    private final transient SizingFunction function;
    private final transient int rows;

    /** All rows behind each other, so that a row is read in one go. */
    private final transient double[] numbers;

    private SizingBatch(Method method, SizingJob job, Map<SizingInput, double[]> columns) {
        this.method = method;
        this.job = job;
        this.columns = new EnumMap<>(SizingInput.class);
        this.columns.putAll(columns);
        this.varied = new VariedJob(job, columns.keySet());
        this.function = SizingFunction.of(method, varied);
        this.rows = columns.values().stream()
                .findFirst()
                .map(column -> column.length)
                .orElse(1);
        this.numbers = numbers(varied.ownRow(method));
    }

    private double[] numbers(double[] ownRow) {
        double[] all = new double[rows * INPUTS];
        for (int row = 0; row < rows; row++) {
            System.arraycopy(ownRow, 0, all, row * INPUTS, INPUTS);
        }
        columns.forEach((input, column) -> {
            for (int row = 0; row < rows; row++) {
                all[row * INPUTS + input.place()] = column[row];
            }
        });
        return all;
    }

    /**
     * Begins with nothing that varies: one row, the job itself.
     *
     * @param method the method
     * @param job what all rows have in common; an input that varies need not be in it
     * @return the batch, to which columns are added
     */
    public static SizingBatch of(Method method, SizingJob job) {
        return new SizingBatch(method, job, Map.of());
    }

    /**
     * A column of numbers for one input.
     *
     * @param input the input
     * @param column a number for each row, in the SI unit that {@link SizingInput} names, pressures gauge; copied
     * @return a copy with the column in place of the job's own number
     * @throws OutOfRangeException if the column is empty, or not as long as the others
     */
    public SizingBatch varying(SizingInput input, double[] column) {
        boolean isAlone = columns.isEmpty() || columns.keySet().equals(Set.of(input));
        if (column.length == 0 || (!isAlone && column.length != rows())) {
            throw new OutOfRangeException(
                    "numbers in the column of the " + input,
                    String.valueOf(column.length),
                    isAlone ? "one or more" : "as many as in the other columns, " + rows(),
                    "give every row its number");
        }
        EnumMap<SizingInput, double[]> more = new EnumMap<>(columns);
        more.put(input, column.clone());
        return new SizingBatch(method, job, more);
    }

    /**
     * How many rows there are.
     *
     * @return 1 or more
     */
    public int rows() {
        return rows;
    }

    /**
     * Sizes all rows.
     *
     * @param volumes takes the required volumes in m3, {@link #REFUSED} where the method refuses; of the length {@link #rows}
     * @return how many rows were refused
     * @throws OutOfRangeException if the array is not as long as there are rows
     */
    public int requiredVolumes(double[] volumes) {
        if (volumes.length != rows()) {
            throw new OutOfRangeException(
                    "places for volumes", String.valueOf(volumes.length), String.valueOf(rows()), "one for each row");
        }
        int refused = 0;
        for (int i = 0; i < volumes.length; i++) {
            try {
                volumes[i] = function.cubicMetres(numbers, i * INPUTS);
            } catch (OutOfRangeException | MissingInputException refusal) {
                volumes[i] = REFUSED;
                refused++;
            }
        }
        return refused;
    }

    /**
     * The job of one row, to size it by itself and see its workings.
     *
     * @param index of the row, from 0
     * @return the job with the row's numbers
     * @throws OutOfRangeException if there is no such row, or a number is not one of its quantity
     */
    public SizingJob job(int index) {
        return varied.at(row(index));
    }

    /**
     * Why the method refuses a row.
     *
     * @param index of the row, from 0
     * @return the refusal in words, or empty if the row has an answer
     * @throws OutOfRangeException if there is no such row
     */
    public Optional<String> refusal(int index) {
        double[] row = row(index);
        try {
            function.cubicMetres(row);
            return Optional.empty();
        } catch (OutOfRangeException | MissingInputException refused) {
            return Optional.of(String.valueOf(refused.getMessage()));
        }
    }

    /** Only what was asked for is written; the rest is made anew on reading. */
    private Object readResolve() {
        return new SizingBatch(method, job, columns);
    }

    private double[] row(int index) {
        if (index < 0 || index >= rows()) {
            throw new OutOfRangeException(
                    "row", String.valueOf(index), "0 to " + (rows() - 1), "count the rows from 0");
        }
        return Arrays.copyOfRange(numbers, index * INPUTS, (index + 1) * INPUTS);
    }
}
