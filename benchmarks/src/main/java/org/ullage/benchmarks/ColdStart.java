package org.ullage.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/**
 * From nothing to the first answer: whole processes, an empty one and one that sizes and prints a vessel, in turn. JMH cannot measure
 * this, as its own classes warm the virtual machine up.
 */
public final class ColdStart {

    private static final int RUNS = 20;

    private ColdStart() {}

    /**
     * Runs both kinds of process and prints least, median and largest wall-clock time.
     *
     * @param arguments none
     * @throws IOException if a process cannot be started
     * @throws InterruptedException if the run is broken off
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        double[] empty = new double[RUNS];
        double[] answer = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            empty[run] = milliseconds(Empty.class);
            answer[run] = milliseconds(FirstAnswer.class);
        }
        print("empty process", empty);
        print("first answer with its workings", answer);
    }

    private static double milliseconds(Class<?> program) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        ProcessBuilder process =
                new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"), program.getName());
        long start = System.nanoTime();
        int status =
                process.redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        if (status != 0) {
            throw new IOException(program.getName() + " ended with " + status);
        }
        return (System.nanoTime() - start) / 1e6;
    }

    private static void print(String what, double[] milliseconds) {
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%s: least %.0f ms, median %.0f ms, largest %.0f ms of %d%n",
                what,
                milliseconds[0],
                (milliseconds[RUNS / 2 - 1] + milliseconds[RUNS / 2]) / 2,
                milliseconds[RUNS - 1],
                RUNS);
    }

    /** Starts and ends. */
    public static final class Empty {

        private Empty() {}

        /**
         * Does nothing.
         *
         * @param arguments none
         */
        public static void main(String[] arguments) {}
    }

    /** Sizes one vessel. */
    public static final class FirstAnswer {

        private FirstAnswer() {}

        /**
         * Prints the required volume and the workings.
         *
         * @param arguments none
         */
        public static void main(String[] arguments) {
            PressureInputs pressures =
                    PressureInputs.NONE.withStaticHead(Length.metres(10)).withReliefSetting(GaugePressure.bar(3));
            SizingJob job = new SizingJob(
                    Loop.withContents(Volume.litres(1000)).steel().filledWith(Water.IAPWS_IF97),
                    VesselType.bladder(),
                    LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(80)),
                    pressures);
            System.out.println(Methods.ASHRAE.size(job).workings().text(UnitSystem.SI));
        }
    }
}
