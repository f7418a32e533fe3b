package org.ullage.fuzz;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;

/**
 * Looks through an answer: every number in it, whatever it can be asked without an argument, and its texts in both unit systems
 * must be finite.
 */
final class Finite {

    /** A word of its own: names and codes may hold these letters. */
    private static final Pattern NOT_FINITE = Pattern.compile("(?<![A-Za-z0-9_])(?:NaN|Infinity)(?![A-Za-z0-9_])");

    /** A comparison or a batch says why one of its methods refuses, and repeats the value. */
    private static final String REFUSED = " is not allowed: it must be ";

    private static final int DEEPEST = 6;
    private static final int MOST_OBJECTS = 3_000;

    /** Fixed values that are no answers. */
    private static final List<Class<?>> FIXED = List.of(
            Enum.class,
            Unit.class,
            Source.class,
            Constant.class,
            CitedTable.class,
            LoopFluid.class,
            org.ullage.method.Method.class);

    private static final ClassValue<List<Method>> QUESTIONS = new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
            return questions(type);
        }
    };

    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    private Finite() {}

    /**
     * Looks through an answer.
     *
     * @param answer any object, or null
     * @throws Fault if something in it is not finite, or asking it fails in an undocumented way
     */
    static void check(Object answer) {
        check(answer, "answer");
    }

    /** Looks through an answer that has a name in the fault. */
    static void check(Object answer, String name) {
        new Finite().look(answer, name, 0);
    }

    /** Checks a number by itself. */
    static double check(String what, double number) {
        if (!Double.isFinite(number)) {
            throw new Fault(what + " is " + number);
        }
        return number;
    }

    private void look(Object value, String where, int depth) {
        if (value == null || depth > DEEPEST || seen.size() > MOST_OBJECTS) {
            return;
        }
        if (value instanceof Number number) {
            check(where, number.doubleValue());
        } else if (value instanceof CharSequence text) {
            requireFiniteText(text, where);
        } else if (value instanceof Quantity<?, ?> quantity) {
            check(where, quantity.si());
        } else if (value instanceof double[] numbers) {
            for (double number : numbers) {
                check(where, number);
            }
        } else if (FIXED.stream().noneMatch(fixed -> fixed.isInstance(value)) && seen.add(value)) {
            lookInside(value, where, depth);
        }
    }

    private void lookInside(Object value, String where, int depth) {
        if (value instanceof Optional<?> optional) {
            look(optional.orElse(null), where, depth);
        } else if (value instanceof Collection<?> collection) {
            collection.forEach(element -> look(element, where + "[]", depth + 1));
        } else if (value instanceof Map<?, ?> map) {
            look(map.keySet(), where, depth);
            look(map.values(), where, depth);
        } else if (value.getClass().getName().startsWith("org.ullage.")) {
            for (Method question : QUESTIONS.get(value.getClass())) {
                ask(value, question, where + "." + question.getName(), depth);
            }
        }
    }

    private void ask(Object value, Method question, String where, int depth) {
        if (question.getParameterCount() == 0) {
            look(asked(value, question, where), where, depth + 1);
        } else {
            look(asked(value, question, where, UnitSystem.SI), where, depth + 1);
            look(asked(value, question, where, UnitSystem.IP), where, depth + 1);
        }
    }

    private static Object asked(Object value, Method question, String where, Object... arguments) {
        try {
            return question.invoke(value, arguments);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof Fault fault) {
                throw fault;
            }
            if (!Oracle.isRefusal(thrown.getCause())) {
                throw new Fault("undocumented " + thrown.getCause() + " from " + where, thrown.getCause());
            }
            return null;
        } catch (IllegalAccessException e) {
            throw new IllegalStateException("not public: " + question, e);
        }
    }

    private static void requireFiniteText(CharSequence text, String where) {
        Matcher found = NOT_FINITE.matcher(text);
        while (found.find()) {
            String rest =
                    text.toString().substring(found.end()).lines().findFirst().orElse("");
            if (!rest.contains(REFUSED)) {
                throw new Fault(where + " has a number that is not finite: " + shortened(text.toString()));
            }
        }
    }

    private static String shortened(String text) {
        return text.length() < 300 ? text : text.substring(0, 300) + "...";
    }

    /** Public methods that need nothing, or only a unit system. */
    private static List<Method> questions(Class<?> type) {
        List<Method> questions = new ArrayList<>();
        for (Method method : type.getMethods()) {
            boolean plain = method.getParameterCount() == 0
                    || (method.getParameterCount() == 1 && method.getParameterTypes()[0] == UnitSystem.class);
            if (plain
                    && !Modifier.isStatic(method.getModifiers())
                    && Modifier.isPublic(method.getDeclaringClass().getModifiers())
                    && method.getReturnType() != void.class
                    && method.getDeclaringClass() != Object.class
                    && !method.isBridge()) {
                questions.add(method);
            }
        }
        return questions;
    }
}
