package org.ullage.reference;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.stream.Stream;

/** The classes that make up the library, without tests and reference cases. */
public final class Library {

    /** All of them, hidden ones too. */
    public static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("/reference/"))
            .importPackages("org.ullage");

    private Library() {}

    /** Those that a user can name. */
    public static Stream<Class<?>> publicTypes() {
        return CLASSES.stream().filter(Library::isPublic).map(JavaClass::reflect);
    }

    /** Whether a user can name a class: it is public, and so is all that it stands in. */
    static boolean isPublic(JavaClass item) {
        return item.getModifiers().contains(JavaModifier.PUBLIC)
                && item.getEnclosingClass().map(Library::isPublic).orElse(true);
    }
}
