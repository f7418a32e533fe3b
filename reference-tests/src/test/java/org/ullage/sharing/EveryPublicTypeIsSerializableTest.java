package org.ullage.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Serializable;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ullage.fluids.StatedUncertainty;
import org.ullage.loop.MeasuredContents;
import org.ullage.method.Sizing;
import org.ullage.provenance.CitedTable;
import org.ullage.published.Methods;
import org.ullage.quantity.Pressure;
import org.ullage.reference.Library;
import org.ullage.report.Medium;
import org.ullage.report.OperatingChart;
import org.ullage.uncertainty.ModelFunction;
import org.ullage.uncertainty.MonteCarlo;
import org.ullage.workings.TextTable;

/** Whatever a user puts in or gets out can be stored and sent: a new public type is serializable or stands here with the reason. */
class EveryPublicTypeIsSerializableTest {

    private static final Map<Class<?>, String> EXCEPTIONS = Map.of(
            MeasuredContents.class, "what its steps pass on; contents come of it",
            OperatingChart.class, "collects what is drawn; a chart comes of it",
            TextTable.class, "collects lines; text comes of it",
            CitedTable.class, "reads a resource that is there on every machine",
            MonteCarlo.class, "a run; its result is kept",
            Pressure.class, "marks a dimension and has no instances",
            StatedUncertainty.class, "what a fluid may state beside being one",
            ModelFunction.class, "a formula of the caller's own",
            Medium.class, "where a page is written to");

    @Test
    void everyPublicTypeIs() {
        assertThat(notStorable(Library.publicTypes())).isEqualTo(EXCEPTIONS.keySet());
    }

    /** What can be reached is written and read, whatever its class says; one value of each class will do. */
    @Test
    void everyReachedClassPassesAStream() {
        Map<Class<?>, Object> oneOfEach =
                Reached.from("org.ullage.", Askings.all().stream().map(Asking::ask)).values().stream()
                        .filter(Serializable.class::isInstance)
                        .collect(Collectors.toMap(Object::getClass, value -> value, (first, next) -> first));
        assertThat(oneOfEach).hasSizeGreaterThan(100).containsKey(Sizing.class);
        oneOfEach.values().stream().map(Serializable.class::cast).forEach(value -> {
            byte[] bytes = Stored.bytes(value);
            assertThat(Stored.bytes(Stored.read(bytes)))
                    .as("%s", value.getClass())
                    .isEqualTo(bytes);
        });
    }

    private static Set<Class<?>> notStorable(Stream<Class<?>> types) {
        return types.filter(type -> !Serializable.class.isAssignableFrom(type))
                .filter(type -> !isCollectionOfMethods(type))
                .filter(type -> !isStage(type))
                .collect(Collectors.toSet());
    }

    /** A class that nobody has an instance of. */
    private static boolean isCollectionOfMethods(Class<?> type) {
        boolean hasState =
                Arrays.stream(type.getDeclaredFields()).anyMatch(field -> !Modifier.isStatic(field.getModifiers()));
        boolean canBeMade = Arrays.stream(type.getDeclaredConstructors())
                .anyMatch(constructor -> !Modifier.isPrivate(constructor.getModifiers()));
        return !type.isInterface() && !hasState && !canBeMade;
    }

    /** Builders and the steps of a front door: on the way to an input, and not kept. */
    private static boolean isStage(Class<?> type) {
        return type.getSimpleName().endsWith("Builder") || type.getSimpleName().endsWith("Step");
    }

    /** Would be an answer, if anybody could keep it. */
    static final class Forgotten {

        private final double number = Math.PI;

        double number() {
            return number;
        }
    }

    @Test
    void aTypeThatCannotBeStoredIsFoundOut() {
        assertThat(notStorable(Stream.of(Forgotten.class, Sizing.class, Methods.class)))
                .containsExactly(Forgotten.class);
        assertThat(new Forgotten().number()).isEqualTo(Math.PI);
    }

    @Test
    void noReasonIsBlank() {
        assertThat(new TreeSet<>(EXCEPTIONS.values()))
                .hasSize(EXCEPTIONS.size())
                .noneMatch(String::isBlank);
        assertThat(List.copyOf(EXCEPTIONS.keySet())).noneMatch(Serializable.class::isAssignableFrom);
    }
}
