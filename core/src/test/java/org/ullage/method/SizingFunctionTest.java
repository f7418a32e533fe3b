package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleSupplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** The method as a function of numbers must say what the method itself says: the same bits, or the same refusal in the same words. */
class SizingFunctionTest {

    @Provide
    Arbitrary<Method> methods() {
        return Arbitraries.of(Methods.all()).filter(method -> method.kinds().contains(VesselKind.BLADDER));
    }

    @Provide
    Arbitrary<VesselType> vessels() {
        return Arbitraries.of(
                VesselType.bladder(), VesselType.diaphragm(), VesselType.diaphragm(VolumeFraction.percent(35)));
    }

    @Provide
    Arbitrary<Set<SizingInput>> inputs() {
        return Arbitraries.of(SizingInput.class).set().ofMaxSize(SizingInput.values().length);
    }

    private static Arbitrary<Double> evenly(double from, double to) {
        return Arbitraries.doubles().between(from, to).withDistribution(RandomDistribution.uniform());
    }

    /** A number for each input, mostly one that can be, sometimes one that cannot. */
    @Provide
    Arbitrary<double[]> rows() {
        return Combinators.combine(
                        evenly(-0.1, 5),
                        evenly(270, 300),
                        evenly(280, 390),
                        evenly(-1, 15),
                        evenly(-0.2e5, 2e5),
                        evenly(-1.2e5, 1.5e5),
                        evenly(1.5e5, 6e5),
                        evenly(2e5, 7e5))
                .as((contents, cold, hot, head, coldPressure, charge, last, setting) ->
                        new double[] {contents, cold, hot, head, coldPressure, charge, last, setting});
    }

    @Property(tries = 5000, edgeCases = EdgeCasesMode.NONE)
    void isTheMethodToTheLastBit(
            @ForAll("methods") Method method,
            @ForAll("vessels") VesselType vessel,
            @ForAll("inputs") Set<SizingInput> given,
            @ForAll("inputs") Set<SizingInput> varied,
            @ForAll("rows") double[] own,
            @ForAll("rows") double[] row) {
        SizingJob job;
        try {
            job = new VariedJob(bare(vessel), given).at(own);
        } catch (OutOfRangeException refused) {
            Assume.that(false);
            return;
        }
        VariedJob jobs = new VariedJob(job, varied);
        double[] whole = jobs.ownRow(method);
        varied.forEach(input -> whole[input.place()] = row[input.place()]);
        String expected =
                answer(() -> method.size(jobs.at(whole)).requiredVolume().si());
        String actual = answer(() -> SizingFunction.of(method, jobs).cubicMetres(whole));
        assertThat(actual).isEqualTo(expected);
        Statistics.label("answered").collect(!expected.startsWith("refused"));
    }

    @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
    void alongTheTangentItIsTheMethodToTwelveDigits(
            @ForAll("methods") Method method,
            @ForAll @DoubleRange(min = 0.01, max = 5) double contents,
            @ForAll @DoubleRange(min = 0, max = 30) double head,
            @ForAll @DoubleRange(min = 2e5, max = 7e5) double setting) {
        VariedJob jobs = new VariedJob(
                job(TestFluid.WATER),
                EnumSet.of(SizingInput.CONTENTS, SizingInput.STATIC_HEAD, SizingInput.RELIEF_SETTING));
        Assume.that(method.vapour().equals(VapourAllowance.NONE));
        double[] row = jobs.ownRow(method);
        row[SizingInput.CONTENTS.place()] = contents;
        row[SizingInput.STATIC_HEAD.place()] = head;
        row[SizingInput.RELIEF_SETTING.place()] = setting;
        SizingFunction function;
        try {
            function = SizingFunction.around(method, jobs, jobs.job());
        } catch (OutOfRangeException refused) {
            Assume.that(false);
            return;
        }
        try {
            double whole = method.size(jobs.at(row)).requiredVolume().si();
            assertThat(function.cubicMetres(row)).isCloseTo(whole, within(whole * 1e-12));
        } catch (OutOfRangeException refused) {
            assertThatThrownBy(() -> function.cubicMetres(row)).hasMessage(refused.getMessage());
        }
    }

    @Property
    void atItsCentreTheTangentIsTheMethodToTheLastBit(@ForAll("methods") Method method) {
        VariedJob jobs = new VariedJob(job(TestFluid.WATER), EnumSet.of(SizingInput.CONTENTS));
        Assume.that(method.coldPressure().fixed() == null && method.vapour().equals(VapourAllowance.NONE));
        assertThat(SizingFunction.around(method, jobs, jobs.job()).cubicMetres(jobs.ownRow(method)))
                .isEqualTo(method.size(jobs.job()).requiredVolume().si());
    }

    /** A fluid that gives way ten times as much as water does, so that the slope moves the vessel by percents; its square by less than 0.1 %. */
    @Property(tries = 200)
    void theTangentFollowsThePressures(
            @ForAll @DoubleRange(min = 0, max = 20) double head,
            @ForAll @DoubleRange(min = 3e5, max = 6e5) double setting) {
        Method method = Methods.ASHRAE;
        VariedJob jobs = new VariedJob(
                Jobs.steel(new SoftFluid(), VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)),
                EnumSet.of(SizingInput.STATIC_HEAD, SizingInput.RELIEF_SETTING));
        double[] row = jobs.ownRow(method);
        row[SizingInput.STATIC_HEAD.place()] = head;
        row[SizingInput.RELIEF_SETTING.place()] = setting;
        Sizing whole = method.size(jobs.at(row));
        double volume = whole.requiredVolume().si();
        assertThat(SizingFunction.around(method, jobs, jobs.job()).cubicMetres(row))
                .isCloseTo(volume, within(volume * 1e-3));
    }

    @Example
    void openTanksAreSizedByTheMethod() {
        SizingJob open =
                Jobs.steel(TestFluid.WATER, VesselType.open(), Temperature.celsius(10), Temperature.celsius(80));
        Method method = Methods.all().stream()
                .filter(each -> each.kinds().contains(VesselKind.OPEN))
                .findFirst()
                .orElseThrow();
        VariedJob jobs = new VariedJob(open, EnumSet.of(SizingInput.CONTENTS));
        double volume = method.size(open).requiredVolume().si();
        assertThat(SizingFunction.of(method, jobs).cubicMetres(jobs.ownRow(method)))
                .isEqualTo(volume);
        assertThat(SizingFunction.around(method, jobs, open).cubicMetres(jobs.ownRow(method)))
                .isEqualTo(volume);
    }

    private static String answer(DoubleSupplier question) {
        try {
            return Double.toHexString(question.getAsDouble());
        } catch (OutOfRangeException | MissingInputException refused) {
            return "refused: " + refused.getMessage();
        }
    }

    private static SizingJob job(TestFluid fluid) {
        return Jobs.steel(fluid, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));
    }

    /** A loop and a vessel, nothing else given. */
    private static SizingJob bare(VesselType vessel) {
        return new SizingJob(
                Jobs.loop(TestFluid.WATER), vessel, new LoopTemperatures(null, null, null, null), PressureInputs.NONE);
    }

    @Example
    void aRowThatIsTooShortIsRefused() {
        SizingJob job =
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));
        VariedJob varied = new VariedJob(job, Set.of());
        SizingFunction function = SizingFunction.of(Methods.BS_7074, varied);
        assertThatThrownBy(() -> function.cubicMetres(new double[3]))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("length of the row 3 is not allowed: it must be 8 or more");
        assertThatThrownBy(() -> varied.at(new double[3])).isInstanceOf(OutOfRangeException.class);
    }
}
