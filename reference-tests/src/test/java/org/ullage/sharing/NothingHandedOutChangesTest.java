package org.ullage.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ullage.reference.Library;

/** What the library hands out, and what was handed to it, is not a way to change an answer. */
class NothingHandedOutChangesTest {

    private static final Reached LIBRARY = Reached.from(
            "org.ullage.",
            Stream.concat(Library.publicTypes(), Askings.all().stream().map(Asking::ask)));

    /** What a user cannot have from an answer: no asking leads there, and why. */
    private static final Map<String, String> NOT_REACHED = Map.of();

    @Test
    void listsMapsAndArrays() {
        assertThat(LIBRARY.faults()).isEmpty();
    }

    @Test
    void recordsKeepCopies() {
        assertThat(sharedIn(LIBRARY.values())).isEmpty();
    }

    @Test
    void everyRecordWithACollectionWasLookedAt() {
        Set<String> reached = LIBRARY.values().stream()
                .map(value -> value.getClass().getName())
                .collect(Collectors.toSet());
        Set<String> missed = Library.publicTypes()
                .filter(RecordCopies::hasCollections)
                .map(Class::getName)
                .filter(name -> !reached.contains(name))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(missed).isEqualTo(new TreeSet<>(NOT_REACHED.keySet()));
    }

    private static Set<String> sharedIn(Collection<Object> values) {
        return values.stream()
                .filter(Record.class::isInstance)
                .map(Record.class::cast)
                .flatMap(record -> RecordCopies.shared(record).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void seededFaultsAreFound() {
        Reached faulty = Reached.from(Leaky.class.getName(), Stream.of(new Leaky()));
        assertThat(faulty.faults())
                .containsExactlyInAnyOrder(
                        "Leaky.array() hands out its array",
                        "Leaky.fixedSize() hands out a ArrayList that can be changed",
                        "Leaky.list() hands out a ArrayList that can be changed",
                        "Leaky.map() hands out a EnumMap that can be changed",
                        "Deeper.set() hands out a HashSet that can be changed");
        List<String> follows = RecordCopies.shared(new Leaky.Follows(List.of("a"), Map.of("b", "c")));
        assertThat(follows).containsExactly(Leaky.Follows.class.getName() + ".lines");
    }
}
