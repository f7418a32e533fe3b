package org.ullage.benchmarks;

import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.quantity.Units;
import org.ullage.selection.CatalogueItem;
import org.ullage.selection.ParetoFront;
import org.ullage.selection.RunnerUp;
import org.ullage.selection.Selection;
import org.ullage.selection.SelectionResult;

/** Exact choice of up to six vessels, against ojAlgo's integer solver on the price alone. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
public class SelectionBenchmark {

    private static final int MOST_VESSELS = 6;

    /**
     * The yardstick: least price in cents, one objective.
     *
     * @param jobs the inputs
     * @return the least price
     */
    @Benchmark
    public double ojAlgo(SelectionJobs jobs) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Expression volume = model.addExpression("volume").lower(jobs.requiredLitres[jobs.next()]);
        Expression count = model.addExpression("count").upper(MOST_VESSELS);
        for (CatalogueItem item : jobs.catalogue().items()) {
            Variable pieces = model.addVariable(item.id())
                    .integer()
                    .lower(0)
                    .upper(MOST_VESSELS)
                    .weight(item.price().movePointRight(2));
            volume.set(pieces, Math.rint(item.nominal().in(Units.LITRE)));
            count.set(pieces, 1);
        }
        return model.minimise().getValue();
    }

    /**
     * The choice: least price, then number, footprint and mass, result object included.
     *
     * @param jobs the inputs
     * @return the selection
     */
    @Benchmark
    public SelectionResult choose(SelectionJobs jobs) {
        return jobs.catalogue().choose(jobs.jobs.get(jobs.next()));
    }

    /**
     * The choice and its runner-up.
     *
     * @param jobs the inputs
     * @return the runner-up
     */
    @Benchmark
    public @Nullable RunnerUp runnerUp(SelectionJobs jobs) {
        return chosen(jobs).runnerUp();
    }

    /**
     * The choice and the whole front of price, footprint and number.
     *
     * @param jobs the inputs
     * @return the front
     */
    @Benchmark
    public ParetoFront front(SelectionJobs jobs) {
        return chosen(jobs).front();
    }

    private static Selection chosen(SelectionJobs jobs) {
        return jobs.catalogue().choose(jobs.jobs.get(jobs.next())).orRefuse();
    }
}
