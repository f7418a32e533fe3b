package org.ullage.fuzz;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ullage.fluids.Fluids;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Sizing;
import org.ullage.quantity.AdditiveQuantity;
import org.ullage.uncertainty.ModelFunction;

/** Arguments of any type: ready ones from the {@link Pool}, others made by what the library has to make them. */
final class Arguments {

    /** Deeper than this, null is given where it may be, and what cannot be built is given up. */
    private static final int DEEP = 3;

    private static final int TOO_DEEP = 7;

    private static final String UNCERTAINTY = ModelFunction.class.getPackageName();
    private static final int MOST_DRAWS = 1_000;

    private final Api api;

    Arguments(Api api) {
        this.api = api;
    }

    Object[] of(Executable entry, Draw draw, int depth) throws Exception {
        AnnotatedType[] types = entry.getAnnotatedParameterTypes();
        Object[] arguments = new Object[types.length];
        Class<?> kind = kind(entry, draw);
        for (int i = 0; i < types.length; i++) {
            arguments[i] = argument(types[i], kind, draw, depth);
            // As many draws as are asked for are taken: no hang, but no use either.
            boolean draws = entry.getDeclaringClass().getPackageName().equals(UNCERTAINTY);
            arguments[i] = draws && arguments[i] instanceof Integer count
                    ? (Object) Math.min(count, MOST_DRAWS)
                    : arguments[i];
            // A record that carries an answer holds what it is made of; what is asked of it must be refused or
            // answered.
            boolean carried = entry instanceof Constructor<?>
                    && arguments[i] instanceof Double number
                    && !Double.isFinite(number);
            arguments[i] = carried ? (Object) draw.between(0, 1) : arguments[i];
        }
        return arguments;
    }

    /** The kind of quantity that stands for the type variables of a call. */
    private static Class<?> kind(Executable entry, Draw draw) {
        boolean additive = Stream.concat(
                        Arrays.stream(entry.getTypeParameters()),
                        Arrays.stream(entry.getDeclaringClass().getTypeParameters()))
                .anyMatch(
                        variable -> variable.getBounds()[0].getTypeName().startsWith(AdditiveQuantity.class.getName()));
        List<Class<?>> kinds = Values.kinds();
        Class<?> kind = draw.of(kinds);
        while (additive && !AdditiveQuantity.class.isAssignableFrom(kind)) {
            kind = draw.of(kinds);
        }
        return kind;
    }

    private Object argument(AnnotatedType annotated, Class<?> kind, Draw draw, int depth) throws Exception {
        if (annotated.isAnnotationPresent(Nullable.class) && draw.chance(depth > DEEP ? 1 : 0.3)) {
            return null;
        }
        Type type = annotated.getType();
        if (type instanceof WildcardType wild && wild.getUpperBounds()[0] instanceof Class<?> bound) {
            return instance(bound, draw, depth);
        }
        if (type instanceof TypeVariable<?> || type instanceof WildcardType) {
            return Values.of(kind, draw);
        }
        if (type instanceof ParameterizedType generic
                && annotated instanceof AnnotatedParameterizedType parts
                && generic.getRawType() instanceof Class<?> raw) {
            return container(raw, parts.getAnnotatedActualTypeArguments(), kind, draw, depth);
        }
        return instance((Class<?>) type, draw, depth);
    }

    private Object container(Class<?> raw, AnnotatedType[] of, Class<?> kind, Draw draw, int depth) throws Exception {
        if (raw == List.class || raw == Set.class) {
            List<Object> elements = new ArrayList<>();
            for (int i = draw.below(4); i > 0; i--) {
                elements.add(argument(of[0], kind, draw, depth + 1));
            }
            return raw == List.class ? elements : new LinkedHashSet<>(elements);
        }
        if (raw == Map.class) {
            Map<Object, Object> map = new LinkedHashMap<>();
            for (int i = draw.below(3); i > 0; i--) {
                map.put(argument(of[0], kind, draw, depth + 1), argument(of[1], kind, draw, depth + 1));
            }
            return map;
        }
        if (raw == Function.class) {
            return (Function<String, LoopFluid>) Fluids::parse;
        }
        return raw == Class.class ? Sizing.class : instance(raw, draw, depth);
    }

    /** An object of a class. */
    Object instance(Class<?> type, Draw draw, int depth) throws Exception {
        Object simple = Simple.of(type, draw);
        if (simple != null) {
            return simple;
        }
        List<Executable> makers = api.makersOf(type);
        if (depth > TOO_DEEP || makers.isEmpty()) {
            throw new Refused("nothing made a " + type.getSimpleName());
        }
        // Half of the time what makes one outright, so that a chain of changes to one comes to an end.
        Executable maker = draw.of(makers);
        for (int i = 0;
                i < 3 && maker.getDeclaringClass() == type && maker.getParameterCount() > 6 * (TOO_DEEP - depth);
                i++) {
            maker = draw.of(makers);
        }
        Object made = api.call(maker, draw, depth + 1);
        if (made == null) {
            throw new Refused("there is no " + type.getSimpleName());
        }
        return made;
    }
}
