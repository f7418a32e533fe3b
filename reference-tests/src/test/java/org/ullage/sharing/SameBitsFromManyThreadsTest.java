package org.ullage.sharing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Many threads that put the same question to shared instances at the same moment get what one alone gets, to the last bit. */
class SameBitsFromManyThreadsTest {

    private static final int ROUNDS = 3;

    @TestFactory
    Stream<DynamicContainer> sameBits() {
        return Askings.byIdea().entrySet().stream()
                .map(idea -> DynamicContainer.dynamicContainer(
                        idea.getKey(),
                        idea.getValue().stream()
                                .map(asking -> DynamicTest.dynamicTest(asking.name(), () -> requireSameBits(asking)))));
    }

    private static void requireSameBits(Asking asking) throws InterruptedException, ExecutionException {
        byte[] alone = Stored.bytes(asking.ask());
        List<List<byte[]>> together = Together.run(thread ->
                Stream.generate(() -> Stored.bytes(asking.ask())).limit(ROUNDS).toList());
        assertThat(together).hasSize(Together.THREADS);
        for (List<byte[]> rounds : together) {
            assertThat(rounds)
                    .hasSize(ROUNDS)
                    .allSatisfy(bytes -> assertThat(bytes).isEqualTo(alone));
        }
    }

    @Test
    void anAnswerThatHangsOnWhoAskedIsFoundOut() {
        Asking byThread = new Asking("thread", () -> Thread.currentThread().getName());
        assertThatThrownBy(() -> requireSameBits(byThread)).isInstanceOf(AssertionError.class);
    }

    @Test
    void anAnswerWithAStateOfItsOwnIsFoundOut() {
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> requireSameBits(new Asking("counter", asked::incrementAndGet)))
                .isInstanceOf(AssertionError.class);
    }
}
