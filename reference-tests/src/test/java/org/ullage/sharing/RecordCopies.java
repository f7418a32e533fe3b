package org.ullage.sharing;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether a record keeps collections of its own: whoever made it may go on writing to those that were handed over. */
final class RecordCopies {

    private RecordCopies() {}

    /** The components that follow a list, set or map that is changed after the record was made from it. */
    static List<String> shared(Record original) {
        RecordComponent[] components = original.getClass().getRecordComponents();
        Object[] handedOver = Arrays.stream(components)
                .map(component -> changeable(valueOf(component, original)))
                .toArray();
        if (Arrays.stream(handedOver).noneMatch(RecordCopies::isCollection)) {
            return List.of();
        }
        Record copy = made(original.getClass(), handedOver);
        List<String> shared = new ArrayList<>();
        for (int i = 0; i < components.length; i++) {
            if (isCollection(handedOver[i])) {
                int before = size(valueOf(components[i], copy));
                empty(handedOver[i]);
                if (size(valueOf(components[i], copy)) != before) {
                    shared.add(original.getClass().getName() + "." + components[i].getName());
                }
            }
        }
        return shared;
    }

    /** Whether a class has a component that could be shared. */
    static boolean hasCollections(Class<?> type) {
        return type.isRecord()
                && Arrays.stream(type.getRecordComponents())
                        .map(RecordComponent::getType)
                        .anyMatch(component ->
                                Collection.class.isAssignableFrom(component) || Map.class.isAssignableFrom(component));
    }

    private static Object changeable(Object value) {
        if (value instanceof List<?> list) {
            return new ArrayList<>(list);
        }
        if (value instanceof Set<?> set) {
            return new HashSet<>(set);
        }
        return value instanceof Map<?, ?> map ? new HashMap<>(map) : value;
    }

    private static boolean isCollection(Object value) {
        return value instanceof Collection || value instanceof Map;
    }

    private static int size(Object collection) {
        return collection instanceof Map<?, ?> map ? map.size() : ((Collection<?>) collection).size();
    }

    private static void empty(Object collection) {
        if (collection instanceof Map<?, ?> map) {
            map.clear();
        } else {
            ((Collection<?>) collection).clear();
        }
    }

    static Object valueOf(RecordComponent component, Object record) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component.toString(), e);
        }
    }

    private static Record made(Class<? extends Record> type, Object[] components) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<? extends Record> canonical = type.getDeclaredConstructor(types);
            canonical.setAccessible(true);
            return canonical.newInstance(components);
        } catch (InvocationTargetException refused) {
            throw new AssertionError(type.getName() + " refuses its own components", refused.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName(), e);
        }
    }
}
