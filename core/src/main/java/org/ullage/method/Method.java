package org.ullage.method;

import java.io.Serializable;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;

/**
 * A sizing rule as a set of conventions, put through one equation: required volume = (expansion - pipe credit + reserve) x vessel
 * volume per volume of water. Immutable; {@code with(...)} gives a copy with one convention exchanged, so a house rule is one
 * expression.
 */
public final class Method implements Serializable {

    private static final long serialVersionUID = 1L;

    private final MethodConventions conventions;

    Method(MethodConventions conventions) {
        this.conventions = conventions;
    }

    /**
     * Begins a method.
     *
     * @param name short name as written in files, lower case
     * @param title full title for people
     * @param source where the method as a whole comes from
     * @return a builder
     */
    public static MethodBuilder named(String name, String title, Source source) {
        return new MethodBuilder(name, title, source);
    }

    /**
     * Sizes a vessel.
     *
     * @param job what is to be sized
     * @return the answer with its inputs, from which workings can be derived
     * @throws OutOfRangeException if an input is outside the method, the pressures are out of order or there is nothing to take
     *     up
     * @throws MissingInputException if the method needs an input that was not given
     */
    public Sizing size(SizingJob job) {
        requireKind(job.vessel().kind());
        return new Sizing(new SizingNumbers(this, job));
    }

    private void requireKind(VesselKind kind) {
        if (!conventions.kinds().contains(kind)) {
            throw new OutOfRangeException(
                    "vessel kind",
                    kind.word(),
                    "one of "
                            + conventions.kinds().stream().map(VesselKind::word).collect(Collectors.joining(", "))
                            + " for " + title(),
                    "take another kind of vessel or another method");
        }
    }

    /**
     * The short name.
     *
     * @return as written in files
     */
    public String name() {
        return conventions.name();
    }

    /**
     * The full title.
     *
     * @return for people
     */
    public String title() {
        return conventions.title();
    }

    /**
     * Which temperature the method means by hot.
     *
     * @return the convention
     */
    public HotBasis hotBasis() {
        return conventions.hotBasis();
    }

    /**
     * The kinds of vessel the method sizes.
     *
     * @return the kinds
     */
    public Set<VesselKind> kinds() {
        return conventions.kinds();
    }

    /**
     * Which expansion is counted.
     *
     * @return the convention
     */
    public ExpansionRule expansion() {
        return conventions.expansion();
    }

    /**
     * How the growth of the pipe is counted.
     *
     * @return the convention
     */
    public PipeCredit pipeCredit() {
        return conventions.pipeCredit();
    }

    /** Whether it cannot do without the highest temperature: for its expansion, or for the pipe's. */
    boolean needsHot() {
        return creditsRise() || expansion().needsHot();
    }

    /** Whether it cannot do without the lowest temperature. */
    boolean needsCold(LoopFluid fluid) {
        return creditsRise() || expansion().needsCold(fluid);
    }

    private boolean creditsRise() {
        return pipeCredit() == PipeCredit.SUBTRACTED;
    }

    /**
     * How much water is kept in reserve.
     *
     * @return the convention
     */
    public WaterReserve reserve() {
        return conventions.reserve();
    }

    /**
     * What is counted as turned to vapour in a solar loop that stands still.
     *
     * @return the convention
     */
    public VapourAllowance vapour() {
        return conventions.vapour();
    }

    /**
     * The least nominal volume for each volume of water taken in, whatever the pressures are.
     *
     * @return the limit, or null if the rule has none
     */
    public @Nullable Constant leastVolumePerWater() {
        return conventions.leastVolumePerWater();
    }

    /**
     * How the cold pressure follows from the static head.
     *
     * @return the convention
     */
    public ColdPressureRule coldPressure() {
        return conventions.coldPressure();
    }

    /**
     * How the final pressure follows from the relief setting.
     *
     * @return the convention
     */
    public FinalPressureRule finalPressure() {
        return conventions.finalPressure();
    }

    /**
     * What a vessel of a kind is charged to.
     *
     * @param kind diaphragm, bladder or plain steel
     * @return the convention: the method's own, or the usual one for the kind
     */
    public ChargeRule charge(VesselKind kind) {
        return conventions.charge() == null ? ChargeRule.usualFor(kind) : conventions.charge();
    }

    /**
     * The air pressure that counts when the site's is not given.
     *
     * @return the convention
     */
    public AtmosphereRule atmosphere() {
        return conventions.atmosphere();
    }

    /**
     * The temperatures of the gas.
     *
     * @return the convention
     */
    public GasTemperatures gasTemperatures() {
        return conventions.gasTemperatures();
    }

    /**
     * For an open tank, its volume for each volume of net expansion.
     *
     * @return the allowance, or null if the method has no open tanks
     */
    public @Nullable Constant openAllowance() {
        return conventions.openAllowance();
    }

    /**
     * What the method says about itself with an answer.
     *
     * @return the remarks, those that hold for some jobs only among them
     */
    List<MethodRemark> remarks() {
        return conventions.remarks();
    }

    /**
     * Where the method as a whole comes from.
     *
     * @return its source
     */
    public Source source() {
        return conventions.source();
    }

    /**
     * A copy under another name, for a house rule.
     *
     * @param name name and title of the copy
     * @return the copy
     */
    public Method named(String name) {
        MethodBuilder copy = new MethodBuilder(this, conventions);
        return copy.renamed(name, name + " (from " + title() + ")").build();
    }

    /**
     * A copy that means another temperature by hot.
     *
     * @param hotBasis the convention
     * @return the copy
     */
    public Method with(HotBasis hotBasis) {
        return new MethodBuilder(this, conventions).hotBasis(hotBasis).build();
    }

    /**
     * A copy with another expansion.
     *
     * @param expansion the convention
     * @return the copy
     */
    public Method with(ExpansionRule expansion) {
        return new MethodBuilder(this, conventions).expansion(expansion).build();
    }

    /**
     * A copy with another pipe credit.
     *
     * @param pipeCredit the convention
     * @return the copy
     */
    public Method with(PipeCredit pipeCredit) {
        return new MethodBuilder(this, conventions).pipeCredit(pipeCredit).build();
    }

    /**
     * A copy with another reserve.
     *
     * @param reserve the convention
     * @return the copy
     */
    public Method with(WaterReserve reserve) {
        return new MethodBuilder(this, conventions).reserve(reserve).build();
    }

    /**
     * A copy that counts vapour, and the least volume for the water taken in, as another method does.
     *
     * @param other the method to take both from
     * @return the copy
     */
    public Method withVapourOf(Method other) {
        return new MethodBuilder(this, conventions)
                .vapour(other.vapour())
                .leastVolumePerWater(other.leastVolumePerWater())
                .build();
    }

    /**
     * A copy with another cold pressure.
     *
     * @param coldPressure the convention
     * @return the copy
     */
    public Method with(ColdPressureRule coldPressure) {
        return new MethodBuilder(this, conventions).coldPressure(coldPressure).build();
    }

    /**
     * A copy with another final pressure.
     *
     * @param finalPressure the convention
     * @return the copy
     */
    public Method with(FinalPressureRule finalPressure) {
        return new MethodBuilder(this, conventions).finalPressure(finalPressure).build();
    }

    /**
     * A copy with another gas charge for every kind of vessel.
     *
     * @param charge the convention
     * @return the copy
     */
    public Method with(ChargeRule charge) {
        return new MethodBuilder(this, conventions).charge(charge).build();
    }

    /**
     * A copy with the gas charge of another method.
     *
     * @param other the method to take the charge of each kind of vessel from
     * @return the copy
     */
    public Method withChargeOf(Method other) {
        MethodBuilder copy = new MethodBuilder(this, conventions);
        return copy.charge(other.conventions.charge()).build();
    }

    /**
     * A copy with other temperatures of the gas.
     *
     * @param gasTemperatures the convention
     * @return the copy
     */
    public Method with(GasTemperatures gasTemperatures) {
        return new MethodBuilder(this, conventions)
                .gasTemperatures(gasTemperatures)
                .build();
    }

    /**
     * A copy with another method's allowance for open tanks.
     *
     * @param other the method to take it from
     * @return the copy
     * @throws IllegalStateException if this method has open tanks and the other has no allowance
     */
    public Method withOpenAllowanceOf(Method other) {
        MethodBuilder copy = new MethodBuilder(this, conventions);
        return copy.openAllowance(other.openAllowance()).build();
    }

    /**
     * A copy with another air pressure.
     *
     * @param atmosphere the convention
     * @return the copy
     */
    public Method with(AtmosphereRule atmosphere) {
        return new MethodBuilder(this, conventions).atmosphere(atmosphere).build();
    }

    /**
     * The method with its conventions in words, a line each.
     *
     * @return several lines
     */
    @Override
    public String toString() {
        return title() + "\n  hot means: " + hotBasis() + "\n  expansion: " + expansion()
                + "\n  pipe credit: "
                + pipeCredit() + "\n  reserve: " + reserve() + "\n  vapour: " + vapour() + "\n  cold pressure: "
                + coldPressure()
                + "\n  final pressure: " + finalPressure();
    }
}
