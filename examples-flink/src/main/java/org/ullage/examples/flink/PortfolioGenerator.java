package org.ullage.examples.flink;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Makes a portfolio of invented sites; the same seed makes the same file. */
final class PortfolioGenerator {

    static final String HEADER =
            "id,method,vessel,fluid,contents,cold,hot,pipe,static_head,relief_setting,contents_spread,cold_spread,"
                    + "hot_spread,static_head_spread,relief_setting_spread";

    private static final List<String> FLUIDS =
            List.of("water", "water/if97", "propylene glycol 30 vol%", "ethylene glycol 25 vol%");

    private static final List<String> METHODS = List.of("en-12828", "ashrae", "mass-balance");

    private PortfolioGenerator() {}

    static void write(Path file, int lines, long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(HEADER + "\n");
            for (int i = 1; i <= lines; i++) {
                out.write(line(i, random) + "\n");
            }
        }
    }

    private static String line(int number, SplittableRandom random) {
        long litres = Math.round(random.nextDouble(80, 4000));
        double head = random.nextDouble(3, 12);
        return String.format(
                Locale.ROOT,
                "Quillbrook Yard %d,%s,diaphragm,%s,%d L,%d degC,%d degC,steel,%.1f m,3 bar,%d L,2 K,%.1f K,%.2f m,0.06 bar",
                number,
                one(METHODS, random),
                one(FLUIDS, random),
                litres,
                random.nextInt(12, 21),
                random.nextInt(55, 86),
                head,
                Math.round(0.05 * litres) + 1,
                random.nextDouble(1, 3),
                0.03 * head);
    }

    private static String one(List<String> words, SplittableRandom random) {
        return words.get(random.nextInt(words.size()));
    }
}
