package org.ullage.loop;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/**
 * One line of a list of contents. Immutable.
 *
 * @param name what it is
 * @param amount how much of it
 * @param volume what the whole amount holds; negative for what is taken off a measured volume
 * @param pipe the pipe, or null if the line is no pipe
 * @param sources where the contents come from, the most telling first
 */
public record ContentsItem(
        String name,
        Amount amount,
        VolumeRange volume,
        @Nullable Pipe pipe,
        List<Source> sources) implements Serializable {

    /**
     * Copies the sources.
     *
     * @param name what it is
     * @param amount how much of it
     * @param volume what the whole amount holds
     * @param pipe the pipe, or null
     * @param sources where the contents come from
     */
    public ContentsItem {
        sources = List.copyOf(sources);
    }

    /**
     * A line that is no pipe.
     *
     * @param name what it is
     * @param amount how much of it
     * @param volume what the whole amount holds
     * @param sources where the contents come from
     * @return the line
     */
    public static ContentsItem of(String name, Amount amount, VolumeRange volume, Source... sources) {
        return new ContentsItem(name, amount, volume, null, List.of(sources));
    }
}
