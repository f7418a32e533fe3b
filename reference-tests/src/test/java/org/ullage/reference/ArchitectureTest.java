package org.ullage.reference;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The floors of the house: arrows run down only. */
class ArchitectureTest {

    private static final String ROOT = "org.ullage.";

    /** Each package of core and fluids with those it may use. A new package needs its line here. */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            Map.entry("provenance", List.of()),
            Map.entry("quantity", List.of("provenance")),
            Map.entry("workings", List.of("provenance", "quantity")),
            Map.entry("loop", List.of("provenance", "quantity", "workings")),
            Map.entry("vessel", List.of("provenance", "quantity", "workings")),
            Map.entry("pressure", List.of("provenance", "quantity", "workings", "loop", "vessel")),
            Map.entry("method", List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure")),
            Map.entry(
                    "published", List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method")),
            Map.entry(
                    "comparison",
                    List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method", "published")),
            Map.entry("sizing", List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method")),
            Map.entry(
                    "uncertainty",
                    List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method", "sizing")),
            Map.entry(
                    "selection", List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method")),
            Map.entry(
                    "operation", List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method")),
            Map.entry(
                    "charge",
                    List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method", "operation")),
            Map.entry(
                    "diagnosis",
                    List.of("provenance", "quantity", "workings", "loop", "vessel", "pressure", "method", "operation")),
            Map.entry("support", List.of("provenance", "quantity", "workings", "loop")),
            Map.entry("condition", List.of("provenance", "quantity", "workings")),
            Map.entry(
                    "record",
                    List.of(
                            "provenance",
                            "quantity",
                            "workings",
                            "loop",
                            "vessel",
                            "pressure",
                            "method",
                            "published",
                            "condition")),
            Map.entry(
                    "report",
                    List.of(
                            "provenance",
                            "quantity",
                            "workings",
                            "loop",
                            "vessel",
                            "pressure",
                            "method",
                            "published",
                            "comparison",
                            "sizing",
                            "uncertainty",
                            "operation",
                            "diagnosis",
                            "condition",
                            "record")),
            Map.entry("fluids", List.of("provenance", "quantity", "workings", "loop")));

    @Test
    void everyPackageHasItsFloor() {
        Set<String> packages = Library.CLASSES.stream()
                .map(JavaClass::getPackageName)
                .map(name -> name.substring(ROOT.length()))
                .collect(Collectors.toSet());
        assertThat(packages).containsExactlyInAnyOrderElementsOf(MAY_USE.keySet());
    }

    @TestFactory
    Stream<DynamicTest> arrowsRunDown() {
        return MAY_USE.entrySet().stream()
                .map(floor -> DynamicTest.dynamicTest(
                        floor.getKey(),
                        () -> usesOnly(floor.getKey(), floor.getValue()).check(Library.CLASSES)));
    }

    private static ArchRule usesOnly(String from, List<String> may) {
        List<String> allowed = new ArrayList<>(may);
        allowed.add(from);
        String[] packages = allowed.stream().map(name -> ROOT + name + "..").toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(ROOT + from + "..")
                .should()
                .dependOnClassesThat(
                        resideInAPackage("org.ullage..").and(not(JavaClass.Predicates.resideInAnyPackage(packages))));
    }

    @Test
    void noCircles() {
        slices().matching("org.ullage.(*)..").should().beFreeOfCycles().check(Library.CLASSES);
    }

    @Test
    void commonsMathStaysInside() {
        PublicSignatures.withoutTypesOf("org.apache.commons.math3..").check(Library.CLASSES);
    }

    @TestFactory
    Stream<DynamicTest> whatUsersSeeIsImmutable() {
        return Stream.of(
                        ImmutableTypes.withFinalFields(),
                        ImmutableTypes.withFinalStatics(),
                        ImmutableTypes.withoutOpenFields(),
                        ImmutableTypes.withoutChangeableResults())
                .map(rule -> DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(Library.CLASSES)));
    }

    @Test
    void noClassWritesToAConsoleOrALog() {
        noClasses()
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .dependOnClassesThat()
                .resideInAPackage("java.util.logging..")
                .check(Library.CLASSES);
    }
}
