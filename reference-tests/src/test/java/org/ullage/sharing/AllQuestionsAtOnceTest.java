package org.ullage.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.Test;

/** Different questions at the same moment, each thread in an order of its own, do not get into each other's way. */
class AllQuestionsAtOnceTest {

    @Test
    void everyThreadGetsTheAnswersOfOneAlone() throws InterruptedException, ExecutionException {
        List<Asking> askings = Askings.all();
        Map<Asking, byte[]> alone = new HashMap<>();
        askings.forEach(asking -> alone.put(asking, Stored.bytes(asking.ask())));
        List<Map<Asking, byte[]>> together = Together.run(thread -> inOrderOf(thread, askings));
        for (Map<Asking, byte[]> answers : together) {
            assertThat(answers).hasSize(askings.size());
            answers.forEach(
                    (asking, bytes) -> assertThat(bytes).as("%s", asking).isEqualTo(alone.get(asking)));
        }
    }

    private static Map<Asking, byte[]> inOrderOf(int thread, List<Asking> askings) {
        List<Asking> mixed = new ArrayList<>(askings);
        Collections.shuffle(mixed, new Random(thread));
        Map<Asking, byte[]> answers = new HashMap<>();
        mixed.forEach(asking -> answers.put(asking, Stored.bytes(asking.ask())));
        return answers;
    }
}
