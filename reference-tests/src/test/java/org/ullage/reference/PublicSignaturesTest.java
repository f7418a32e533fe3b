package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.junit.jupiter.api.Test;

/** The rule about signatures finds what it is meant to find. */
public class PublicSignaturesTest {

    /** Shows a foreign type in every way there is, and uses one without showing it. */
    public static class Offender implements UnivariateFunction {

        /** A field. */
        public final UnivariateFunction field = this;

        private final UnivariateFunction hidden = this;

        /** A parameter in a generic type. */
        public void parameter(List<? extends UnivariateFunction> list) {
            assertThat(list.contains(hidden)).isFalse();
        }

        /** A result. */
        UnivariateFunction notSeen() {
            return hidden;
        }

        /** An exception. */
        protected void exception() throws MathIllegalStateException {}

        @Override
        public double value(double x) {
            return x;
        }
    }

    @Test
    void catchesEveryPlace() {
        EvaluationResult result = PublicSignatures.withoutTypesOf("org.apache.commons.math3..")
                .evaluate(new ClassFileImporter().importClasses(Offender.class));
        assertThat(result.getFailureReport().getDetails())
                .hasSize(4)
                .anyMatch(line -> line.contains("has the parent"))
                .anyMatch(line -> line.contains(".field "))
                .anyMatch(line -> line.contains(".parameter("))
                .anyMatch(line -> line.contains(".exception("));
    }
}
