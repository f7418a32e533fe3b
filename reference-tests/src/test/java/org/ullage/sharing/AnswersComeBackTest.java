package org.ullage.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What went through a stream is what it was: the same class, text and bits, and equal where equality is that of values. */
class AnswersComeBackTest {

    static Iterable<Asking> askings() {
        return Askings.all();
    }

    @ParameterizedTest
    @MethodSource("askings")
    void theSame(Asking asking) {
        Serializable original = asking.ask();
        byte[] bytes = Stored.bytes(original);
        Serializable copy = Stored.read(bytes);
        assertThat(copy).hasSameClassAs(original);
        assertThat(Stored.bytes(copy)).isEqualTo(bytes);
        assertThat(text(copy)).isEqualTo(text(original));
        if (isComparedByValue(original)) {
            assertThat(copy).isEqualTo(original).hasSameHashCodeAs(original);
        }
    }

    /** What has no text of its own shows an address, which is of no interest. */
    private static String text(Object value) {
        return value.toString().replaceAll("@[0-9a-f]+", "");
    }

    /** Whether neither the value nor a part of it is equal to nothing but itself. */
    private static boolean isComparedByValue(@Nullable Object value) {
        if (value == null) {
            return true;
        }
        if (value instanceof Collection<?> collection) {
            return collection.stream().allMatch(AnswersComeBackTest::isComparedByValue);
        }
        if (value instanceof Map<?, ?> map) {
            return isComparedByValue(map.keySet()) && isComparedByValue(map.values());
        }
        return value instanceof Record record
                ? Arrays.stream(record.getClass().getRecordComponents())
                        .allMatch(component -> isComparedByValue(RecordCopies.valueOf(component, record)))
                : hasOwnEquals(value.getClass());
    }

    private static boolean hasOwnEquals(Class<?> type) {
        try {
            return type.getMethod("equals", Object.class).getDeclaringClass() != Object.class;
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The check of equality is not passed over for want of anything that has it. */
    @Test
    void mostAnswersAreComparedByValue() {
        assertThat(Askings.all().stream().map(Asking::ask).filter(AnswersComeBackTest::isComparedByValue))
                .hasSizeGreaterThan(100)
                .contains(QuillbrookYard.CATALOGUE, ServiceAskings.BOOK);
    }
}
