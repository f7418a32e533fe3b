package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** One test a case: this library does what every reference case demands. */
class ReferenceCaseTest {

    private final ImplementationUnderTest ullage = new UllageImplementation();

    @TestFactory
    Stream<DynamicTest> everyCasePasses() {
        return ReferenceCases.all().stream()
                .map(referenceCase ->
                        DynamicTest.dynamicTest(referenceCase.id(), () -> assertPasses(List.of(referenceCase))));
    }

    private void assertPasses(List<ReferenceCase> one) {
        CaseResult result = ReferenceRun.of(ullage, one).results().get(0);
        assertThat(result.outcome())
                .as("%s: %s", result.referenceCase().question(), result.remark())
                .isEqualTo(Outcome.PASSED);
    }
}
