package org.ullage.benchmarks;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ullage.quantity.Volume;
import org.ullage.selection.Catalogue;
import org.ullage.selection.SelectionJob;

/** Jobs on an invented catalogue that need one to six vessels; a different one each call. */
@State(Scope.Benchmark)
public class SelectionJobs {

    private static final int JOBS = 64;

    /** Items in the catalogue. */
    @Param({"40"})
    public int items;

    final int[] requiredLitres =
            new Random(JOBS).ints(JOBS, 100, 5 * InventedVessels.LARGEST_LITRES).toArray();
    final List<SelectionJob> jobs = IntStream.of(requiredLitres)
            .mapToObj(litres -> SelectionJob.forVolumes(Volume.litres(litres), null))
            .toList();

    private Catalogue catalogue = InventedVessels.catalogue(1);
    private int calls;

    /** Invents the catalogue. */
    @Setup
    public void invent() {
        catalogue = InventedVessels.catalogue(items);
    }

    Catalogue catalogue() {
        return catalogue;
    }

    int next() {
        return calls++ & (JOBS - 1);
    }
}
