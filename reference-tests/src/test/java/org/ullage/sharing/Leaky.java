package org.ullage.sharing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A class wrong in every way that must be found, and right beside it in every way that must not. */
public final class Leaky {

    private final double[] numbers = {1, 2};
    private final List<String> words = new ArrayList<>(List.of("word"));
    private final Map<Thread.State, String> states = new EnumMap<>(Map.of(Thread.State.NEW, "new"));

    /** Wrong. */
    public double[] array() {
        return numbers;
    }

    /** Right. */
    public double[] copy() {
        return numbers.clone();
    }

    /** Wrong. */
    public List<String> list() {
        return words;
    }

    /** Right. */
    public List<String> view() {
        return Collections.unmodifiableList(words);
    }

    /** Wrong: nothing can be added, but what is there can be replaced. */
    public List<String> fixedSize() {
        return Arrays.asList("word");
    }

    /** Wrong. */
    public Map<Thread.State, String> map() {
        return states;
    }

    /** Right itself. */
    public Optional<Deeper> deeper() {
        return Optional.of(new Deeper());
    }

    /** Reached in a second step. */
    public static final class Deeper {

        private final Set<String> set = new HashSet<>();

        /** Wrong. */
        public Set<String> set() {
            return set;
        }
    }

    /**
     * Copies one of its two collections.
     *
     * @param lines kept as they were handed over
     * @param cells copied
     */
    public record Follows(List<String> lines, Map<String, String> cells) {

        /** Forgets the lines. */
        public Follows {
            cells = Map.copyOf(cells);
        }
    }
}
