package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules about immutability find what they are meant to find. */
public class ImmutableTypesTest {

    /** Breaks every rule once. */
    @SuppressWarnings("NonApiType")
    public static class Offender {

        private static int asked;

        /** An array that anybody can write to. */
        public final double[] open = {1};

        private int answered;
        private final ArrayList<String> names = new ArrayList<>();

        /** Hands out what it keeps. */
        public ArrayList<String> names() {
            asked++;
            answered++;
            names.add(asked + " " + answered);
            return names;
        }
    }

    /** May have fields that change, and nothing else. */
    public static class OffenderBuilder {

        private int count;

        /** Counts. */
        public int next() {
            count++;
            return count;
        }
    }

    private static final JavaClasses BOTH =
            new ClassFileImporter().importClasses(Offender.class, OffenderBuilder.class);

    private static List<String> found(ArchRule rule) {
        return rule.evaluate(BOTH).getFailureReport().getDetails();
    }

    @Test
    void catchesAFieldThatChanges() {
        assertThat(found(ImmutableTypes.withFinalFields()))
                .singleElement()
                .asString()
                .contains("Offender.answered");
    }

    @Test
    void catchesAStaticThatChanges() {
        assertThat(found(ImmutableTypes.withFinalStatics()))
                .singleElement()
                .asString()
                .contains("Offender.asked");
    }

    @Test
    void catchesAnOpenArray() {
        assertThat(found(ImmutableTypes.withoutOpenFields()))
                .singleElement()
                .asString()
                .contains("Offender.open");
    }

    @Test
    void catchesACollectionToWriteTo() {
        assertThat(found(ImmutableTypes.withoutChangeableResults()))
                .singleElement()
                .asString()
                .contains("Offender.names()");
    }
}
