package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.ullage.quantity.OutOfRangeException;

/** One test a case: this library does what every reference case demands. */
class ReferenceCaseTest {

    private final ImplementationUnderTest ullage = new UllageImplementation();

    @TestFactory
    Stream<DynamicTest> everyCasePasses() {
        return ReferenceCases.all().stream()
                .map(each -> DynamicTest.dynamicTest(each.file() + " " + each.id(), () -> assertPasses(each)));
    }

    @TestFactory
    Stream<DynamicTest> refusalsAreAboutTheInputs() {
        return ReferenceCases.all().stream()
                .filter(each -> each.verdict() == Verdict.REFUSED)
                .map(each -> DynamicTest.dynamicTest(
                        each.id(), () -> assertThat(refusal(each)).isInstanceOf(OutOfRangeException.class)));
    }

    private void assertPasses(ReferenceCase referenceCase) {
        CaseResult result =
                ReferenceRun.of(ullage, List.of(referenceCase)).results().get(0);
        assertThat(result.outcome())
                .as("%s: %s", referenceCase.question(), result.remark())
                .isEqualTo(Outcome.PASSED);
    }

    private Throwable refusal(ReferenceCase referenceCase) {
        return catchThrowable(() -> ullage.answer(referenceCase.question()));
    }
}
