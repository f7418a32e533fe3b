package org.ullage.sharing;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Everything of a package that can be had from given values by public methods without arguments, and what is wrong with it: a list or map
 * that can be changed, or an array that is the same one at every call.
 */
final class Reached {

    /** Quantities and steps come by the thousand; the first few of each class tell enough. */
    private static final int MOST_OF_A_CLASS = 30;

    private final String packages;
    private final Map<Object, Boolean> seen = new IdentityHashMap<>();
    private final Map<Class<?>, Integer> count = new HashMap<>();
    private final Deque<Object> open = new ArrayDeque<>();
    private final TreeSet<String> faults = new TreeSet<>();

    private Reached(String packages) {
        this.packages = packages;
    }

    /**
     * Goes through all that can be reached.
     *
     * @param packages the package that is looked into, with those below it
     * @param roots where to begin: values, and classes for their public constants
     */
    static Reached from(String packages, Stream<?> roots) {
        Reached reached = new Reached(packages);
        roots.forEach(root -> {
            if (root instanceof Class<?> type) {
                reached.constantsOf(type);
            } else {
                reached.meet("the start", root);
            }
        });
        while (!reached.open.isEmpty()) {
            reached.askEverything(reached.open.removeFirst());
        }
        return reached;
    }

    /** What can be changed, one line each. */
    List<String> faults() {
        return List.copyOf(faults);
    }

    /** The values of the package. */
    Collection<Object> values() {
        return seen.keySet();
    }

    private void constantsOf(Class<?> type) {
        for (Field field : type.getFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getDeclaringClass() == type) {
                try {
                    meet(type.getSimpleName() + "." + field.getName(), field.get(null));
                } catch (IllegalAccessException hidden) {
                    throw new IllegalStateException(hidden);
                }
            }
        }
    }

    private void askEverything(Object value) {
        for (Method method : value.getClass().getMethods()) {
            boolean asks = method.getParameterCount() == 0
                    && method.getReturnType() != void.class
                    && !Modifier.isStatic(method.getModifiers())
                    && method.getDeclaringClass() != Object.class;
            if (asks) {
                String where = value.getClass().getSimpleName() + "." + method.getName() + "()";
                ask(value, method).ifPresent(answer -> {
                    if (answer.getClass().isArray() && isSameAgain(value, method, answer)) {
                        faults.add(where + " hands out its array");
                    }
                    meet(where, answer);
                });
            }
        }
    }

    private static boolean isSameAgain(Object value, Method method, Object answer) {
        return Array.getLength(answer) > 0
                && ask(value, method).filter(again -> again == answer).isPresent();
    }

    /** The answer; empty if there is none or it is refused. */
    private static Optional<Object> ask(Object value, Method method) {
        method.setAccessible(true);
        try {
            return Optional.ofNullable(method.invoke(value));
        } catch (InvocationTargetException refused) {
            return Optional.empty();
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private void meet(String where, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(content -> meet(where, content));
        } else if (value instanceof Collection<?> collection) {
            requireFixed(where, collection);
            collection.forEach(element -> meet(where, element));
        } else if (value instanceof Map<?, ?> map) {
            requireFixed(where, map);
            map.forEach((key, content) -> {
                meet(where, key);
                meet(where, content);
            });
        } else if (value instanceof Object[] array) {
            Arrays.stream(array).forEach(element -> meet(where, element));
        } else if (value != null && isLookedInto(value.getClass()) && seen.put(value, true) == null) {
            if (count.merge(value.getClass(), 1, Integer::sum) <= MOST_OF_A_CLASS) {
                open.addLast(value);
            }
        }
    }

    private boolean isLookedInto(Class<?> type) {
        return type.getName().startsWith(packages) && !type.getSimpleName().endsWith("Builder");
    }

    private <T> void requireFixed(String where, Collection<T> collection) {
        requireRefusal(where, collection, all -> all.add(null));
        if (collection instanceof List<T> list && !list.isEmpty()) {
            requireRefusal(where, list, all -> all.set(0, all.get(0)));
        }
    }

    private <K, V> void requireFixed(String where, Map<K, V> map) {
        map.entrySet().stream()
                .findFirst()
                .ifPresent(entry -> requireRefusal(where, map, all -> all.put(entry.getKey(), entry.getValue())));
    }

    private <C> void requireRefusal(String where, C collection, Consumer<C> change) {
        try {
            change.accept(collection);
        } catch (UnsupportedOperationException fixed) {
            return;
        } catch (RuntimeException changeable) {
            // It would have been changed, had the value been one that it takes.
        }
        faults.add(where + " hands out a " + collection.getClass().getSimpleName() + " that can be changed");
    }
}
