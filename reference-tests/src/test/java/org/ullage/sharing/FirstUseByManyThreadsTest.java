package org.ullage.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.ullage.reference.Library;

/**
 * The first use of a class reads its tables and makes its constants. Threads that first use the classes of the library in different
 * orders at the same moment do not wait for each other for ever, and get the same constants. A class loader of its own makes every try a
 * first one.
 */
class FirstUseByManyThreadsTest {

    private static final int TRIES = 5;

    private static final List<String> NAMES =
            Library.CLASSES.stream().map(item -> item.getName()).sorted().toList();

    private static final List<String> HERE = FirstUse.sums();

    @RepeatedTest(TRIES)
    void everyOrderComesToItsEnd(RepetitionInfo tried) throws Exception {
        try (URLClassLoader fresh = new URLClassLoader(classPath(), ClassLoader.getPlatformClassLoader())) {
            int seed = tried.getCurrentRepetition() * Together.THREADS;
            List<Integer> begun = Together.run(thread -> begin(fresh, new Random(seed + thread)));
            assertThat(begun).hasSize(Together.THREADS).containsOnly(NAMES.size());
            assertThat(answers(fresh)).isEqualTo(HERE);
        }
    }

    private static int begin(ClassLoader fresh, Random order) {
        List<String> mixed = new ArrayList<>(NAMES);
        Collections.shuffle(mixed, order);
        int begun = 0;
        for (String name : mixed) {
            try {
                Class.forName(name, true, fresh);
                begun++;
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(e);
            }
        }
        return begun;
    }

    private static Object answers(ClassLoader fresh) throws ReflectiveOperationException {
        Class<?> firstUse = Class.forName(FirstUse.class.getName(), true, fresh);
        assertThat(firstUse).isNotSameAs(FirstUse.class);
        return firstUse.getMethod("sums").invoke(null);
    }

    private static URL[] classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(FirstUseByManyThreadsTest::url)
                .toArray(URL[]::new);
    }

    private static URL url(String entry) {
        try {
            return new File(entry).toURI().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalStateException(e);
        }
    }
}
