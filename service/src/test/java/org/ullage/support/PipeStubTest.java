package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.PipeStandard;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class PipeStubTest {

    private static final StubSection PLAIN = StubSection.plain(PipeStandard.ASME_B36_10_SCH_40.size("3/4"));
    private static final StubSection THREADED = StubSection.threaded(PipeStandard.ASME_B36_10_SCH_40.size("3/4"));

    private static PipeStub stub(StubSection section, double pounds, double inches) {
        return PipeStub.of(section, Mass.pounds(pounds), Length.of(inches, Units.INCH), AllowableStress.STEEL);
    }

    /** 47 lb at 8 in: 376 lbf in; S = pi (1.05^4 - 0.824^4) / (32 x 1.05) = 0.07055 in3; A = 0.33269 in2. */
    @Example
    void byHandInInches() {
        PipeStub stub = stub(PLAIN, 47, 8);
        assertThat(stub.moment().in(Units.POUND_FORCE_INCH)).isCloseTo(376, within(1e-9));
        assertThat(stub.bendingStress().in(Units.STRESS_PSI)).isCloseTo(376 / 0.070547, within(1.0));
        assertThat(stub.directStress().in(Units.STRESS_PSI)).isCloseTo(47 / 0.33269, within(0.1));
        assertThat(stub.check().passes()).isTrue();
    }

    /** 10 kg, 0.2 m aside, 30 N at 0.5 m: 19.6133 + 15 N m. */
    @Example
    void anEarthquakeBendsItMore() {
        PipeStub stub = new PipeStub(
                PLAIN,
                Mass.kilograms(10),
                Length.metres(0.2),
                new SideForce(Force.newtons(30), Length.metres(0.5)),
                AllowableStress.given(Stress.megapascals(50)));
        assertThat(stub.moment().si()).isCloseTo(34.6133, within(1e-9));
    }

    @Example
    void theThreadFailsWherePlainPipePasses() {
        PipeStub plain = stub(PLAIN, 100, 8);
        PipeStub threaded = stub(THREADED, 100, 8);
        assertThat(plain.check().passes()).isTrue();
        assertThat(threaded.check().passes()).isFalse();
        assertThat(threaded.check().margin()).isNegative();
        assertThat(threaded.text(UnitSystem.IP)).contains("root of its NPT thread", "REFUSED", "15000 psi");
        assertThat(threaded.text(UnitSystem.SI)).contains("MPa", "[FROM_MEMORY] ASME B31.9");
    }

    @Example
    void workingsAndCautions() {
        assertThat(stub(THREADED, 47, 8).workings().text(UnitSystem.IP))
                .contains(
                        "W * e + F * a",
                        "47 lbf * 8 in + 0 lbf * 0 in",
                        "376 lbf in",
                        "pi * ((0.935714 in)^4 - (0.824 in)^4)");
        assertThat(stub(PLAIN, 47, 8).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("joints"))
                .anySatisfy(caution -> assertThat(caution.text()).contains("licensed"));
    }

    @Example
    void allowableByMaterial() {
        assertThat(AllowableStress.usualFor(PipeMaterial.STEEL).stress()).isEqualTo(Stress.psi(15_000));
        assertThat(AllowableStress.usualFor(PipeMaterial.COPPER).stress()).isEqualTo(Stress.psi(6_000));
        assertThatThrownBy(() -> AllowableStress.usualFor(PipeMaterial.RIGID))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("support of its own");
    }

    @Property
    void stressGrowsWithWeightAndArm(
            @ForAll @DoubleRange(min = 1, max = 500) double pounds,
            @ForAll @DoubleRange(min = 0.1, max = 40) double inches) {
        Stress stress = stub(PLAIN, pounds, inches).check().actual();
        assertThat(stub(PLAIN, pounds * 1.01, inches).check().actual()).isGreaterThan(stress);
        assertThat(stub(PLAIN, pounds, inches * 1.01).check().actual()).isGreaterThan(stress);
        assertThat(stub(THREADED, pounds, inches).check().actual()).isGreaterThan(stress);
    }

    @Property
    void bothSystemsAreOneAnswer(@ForAll @DoubleRange(min = 1, max = 500) double pounds) {
        PipeStub metric = PipeStub.of(
                PLAIN, Mass.kilograms(pounds * 0.45359237), Length.millimetres(8 * 25.4), AllowableStress.STEEL);
        assertThat(metric.check().use())
                .isCloseTo(stub(PLAIN, pounds, 8).check().use(), within(1e-12 * pounds));
    }

    @Example
    void badInput() {
        assertThatThrownBy(() -> AllowableStress.given(Stress.psi(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("allowable stress");
        assertThatThrownBy(() -> stub(PLAIN, 0, 8)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> stub(PLAIN, 10, -1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new SideForce(Force.newtons(-1), Length.metres(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new SideForce(Force.newtons(1), Length.metres(-0.1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("arm of the side force");
    }
}
