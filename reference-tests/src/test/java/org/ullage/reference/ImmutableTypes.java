package org.ullage.reference;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.INTERFACES;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Collection;
import java.util.Map;

/**
 * What can be seen of immutability without running anything: fields stay what they are, and no field or method promises a collection that
 * can be changed. Builders, which are there to be changed, are the exception.
 */
final class ImmutableTypes {

    private static final DescribedPredicate<JavaClass> SEEN = describe("are public", Library::isPublic);

    private static final DescribedPredicate<JavaClass> NO_BUILDER =
            describe("are no builder", item -> !item.getSimpleName().endsWith("Builder"));

    /** A class such as {@code ArrayList}, where {@code List} may be one that cannot be changed. */
    private static final DescribedPredicate<JavaClass> CHANGEABLE_COLLECTION = assignableTo(Collection.class)
            .or(assignableTo(Map.class))
            .and(not(INTERFACES))
            .as("a class of collections");

    private static final DescribedPredicate<JavaClass> ARRAY = describe("an array", JavaClass::isArray);

    private ImmutableTypes() {}

    static ArchRule withFinalFields() {
        return fields().that()
                .areNotStatic()
                .and()
                .areDeclaredInClassesThat(SEEN.and(NO_BUILDER))
                .should()
                .beFinal();
    }

    /** In hidden classes too: what one thread puts there, every other one sees. */
    static ArchRule withFinalStatics() {
        return fields().that().areStatic().should().beFinal();
    }

    static ArchRule withoutOpenFields() {
        return fields().that()
                .areDeclaredInClassesThat(SEEN)
                .and()
                .areNotPrivate()
                .and()
                .areNotPackagePrivate()
                .should()
                .notHaveRawType(ARRAY.or(CHANGEABLE_COLLECTION));
    }

    static ArchRule withoutChangeableResults() {
        return methods()
                .that()
                .areDeclaredInClassesThat(SEEN)
                .and()
                .arePublic()
                .should()
                .notHaveRawReturnType(CHANGEABLE_COLLECTION);
    }
}
