package org.ullage.method;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.vessel.VesselKind;

/**
 * The required volume as a function of numbers: one method, and a job some of whose inputs vary. A closed vessel is worked out without
 * objects; where that has no answer the whole method is asked, which says why. Immutable and safe for many threads.
 */
public final class SizingFunction implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Method method;
    private final VariedJob varied;
    private final @Nullable ClosedSizing closed;

    private SizingFunction(Method method, VariedJob varied, @Nullable ClosedSizing closed) {
        this.method = method;
        this.varied = varied;
        this.closed = closed;
    }

    /**
     * The method itself: for every row the same answer as {@link Method#size} to the last bit.
     *
     * @param method the method
     * @param varied the job and what varies in it
     * @return the function
     */
    public static SizingFunction of(Method method, VariedJob varied) {
        boolean isQuick = isClosed(method, varied) && ClosedSizing.canAnswer(method, varied);
        return new SizingFunction(method, varied, isQuick ? new ClosedSizing(method, varied, null) : null);
    }

    /**
     * The method where the temperatures do not vary, for very many rows near each other: the expansion, which hangs on the pressures by
     * the little that a liquid gives way, follows them along its tangent. At the centre the answer is the method's to the last bit.
     *
     * @param method the method
     * @param varied the job and what varies in it
     * @param centre a job that the method can size, with the temperatures of all rows
     * @return the function; the same as {@link #of} for open tanks, or if a temperature varies
     * @throws OutOfRangeException if the method refuses the centre
     * @throws MissingInputException if an input is missing
     */
    public static SizingFunction around(Method method, VariedJob varied, SizingJob centre) {
        boolean isFixed = !varied.varied().contains(SizingInput.COLD_TEMPERATURE)
                && !varied.varied().contains(SizingInput.HOT_TEMPERATURE);
        if (!isFixed || !isClosed(method, varied)) {
            return of(method, varied);
        }
        ExpansionTangent tangent = new ExpansionTangent(new SizingNumbers(method, centre));
        return new SizingFunction(method, varied, new ClosedSizing(method, varied, tangent));
    }

    /** A rule that is a table has pressures of its own and checks for them. */
    private static boolean isClosed(Method method, VariedJob varied) {
        return varied.job().vessel().kind() != VesselKind.OPEN
                && method.coldPressure().fixed() == null
                && method.finalPressure().fixed() == null;
    }

    /**
     * Smallest nominal volume that does the job.
     *
     * @param row a number for each {@link SizingInput} that is given or varies, at its place and in SI units; the others are not looked at
     * @return m3
     * @throws OutOfRangeException if the method refuses, or the row is too short
     * @throws MissingInputException if an input is missing
     */
    public double cubicMetres(double[] row) {
        return cubicMetres(row, 0);
    }

    /**
     * The same for one of many rows that lie behind each other in one array.
     *
     * @param rows rows of a number for each {@link SizingInput}
     * @param first place of the row's first number
     * @return m3
     * @throws OutOfRangeException if the method refuses, or the row is too short
     * @throws MissingInputException if an input is missing
     */
    public double cubicMetres(double[] rows, int first) {
        VariedJob.requireWhole(rows, first);
        double volume = closed == null ? Double.NaN : closed.cubicMetres(rows, first);
        if (Double.isFinite(volume)) {
            return volume;
        }
        double[] row = Arrays.copyOfRange(rows, first, first + VariedJob.PLACES);
        return method.size(varied.at(row)).requiredVolume().si();
    }
}
