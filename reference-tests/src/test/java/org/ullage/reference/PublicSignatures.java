package org.ullage.reference;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.SimpleConditionEvent.violated;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.stream.Stream;

/** A rule about the types that a user of a library meets: in public and protected fields, methods, constructors and parents. */
final class PublicSignatures {

    private PublicSignatures() {}

    static ArchRule withoutTypesOf(String packages) {
        return ArchRuleDefinition.classes().should(notShow(resideInAPackage(packages)));
    }

    private static ArchCondition<JavaClass> notShow(DescribedPredicate<JavaClass> hidden) {
        return new ArchCondition<>("not show types that " + hidden.getDescription()) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                if (!isSeen(item)) {
                    return;
                }
                parents(item)
                        .filter(type -> shows(type, hidden))
                        .forEach(type ->
                                events.add(violated(item, item.getName() + " has the parent " + type.getName())));
                item.getMembers().stream()
                        .filter(PublicSignatures::isSeen)
                        .filter(member -> types(member).anyMatch(type -> shows(type, hidden)))
                        .forEach(member -> events.add(violated(member, member.getFullName() + " shows a hidden type")));
            }
        };
    }

    private static boolean isSeen(JavaClass item) {
        return isSeen(
                        item.getModifiers().contains(JavaModifier.PUBLIC),
                        item.getModifiers().contains(JavaModifier.PROTECTED))
                && item.getEnclosingClass().map(PublicSignatures::isSeen).orElse(true);
    }

    private static boolean isSeen(JavaMember member) {
        return isSeen(
                member.getModifiers().contains(JavaModifier.PUBLIC),
                member.getModifiers().contains(JavaModifier.PROTECTED));
    }

    private static boolean isSeen(boolean isPublic, boolean isProtected) {
        return isPublic || isProtected;
    }

    private static Stream<JavaType> parents(JavaClass item) {
        return Stream.concat(item.getSuperclass().stream(), item.getInterfaces().stream());
    }

    private static Stream<JavaType> types(JavaMember member) {
        if (member instanceof JavaField field) {
            return Stream.of(field.getType());
        }
        JavaCodeUnit unit = (JavaCodeUnit) member;
        return Stream.of(
                        Stream.of(unit.getReturnType()),
                        unit.getParameterTypes().stream(),
                        unit.getExceptionTypes().stream())
                .flatMap(types -> types);
    }

    private static boolean shows(JavaType type, DescribedPredicate<JavaClass> hidden) {
        return type.getAllInvolvedRawTypes().stream().anyMatch(hidden);
    }
}
