package org.ullage.method;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.vessel.VesselKind;

/**
 * A sizing rule as a set of conventions, put through one equation: required volume = (expansion - pipe credit + reserve) x vessel
 * volume per volume of water. Immutable; {@code with(...)} gives a copy with one convention exchanged, so a house rule is one
 * expression.
 */
public final class Method implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Conventions conventions;

    private Method(Conventions conventions) {
        this.conventions = conventions;
    }

    /** The parts of a method. */
    private record Conventions(
            String name,
            String title,
            HotBasis hotBasis,
            Set<VesselKind> kinds,
            ExpansionRule expansion,
            PipeCredit pipeCredit,
            WaterReserve reserve,
            ColdPressureRule coldPressure,
            FinalPressureRule finalPressure,
            @Nullable ChargeRule charge,
            AtmosphereRule atmosphere,
            @Nullable Constant openAllowance,
            List<MethodRemark> remarks,
            Source source)
            implements Serializable {}

    /**
     * Begins a method.
     *
     * @param name short name as written in files, lower case
     * @param title full title for people
     * @param source where the method as a whole comes from
     * @return a builder
     */
    public static Builder named(String name, String title, Source source) {
        return new Builder(name, title, source);
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
        if (!conventions.kinds.contains(kind)) {
            throw new OutOfRangeException(
                    "vessel kind",
                    kind.word(),
                    "one of "
                            + conventions.kinds.stream().map(VesselKind::word).collect(Collectors.joining(", "))
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
        return conventions.name;
    }

    /**
     * The full title.
     *
     * @return for people
     */
    public String title() {
        return conventions.title;
    }

    /**
     * Which temperature the method means by hot.
     *
     * @return the convention
     */
    public HotBasis hotBasis() {
        return conventions.hotBasis;
    }

    /**
     * The kinds of vessel the method sizes.
     *
     * @return the kinds
     */
    public Set<VesselKind> kinds() {
        return conventions.kinds;
    }

    /**
     * Which expansion is counted.
     *
     * @return the convention
     */
    public ExpansionRule expansion() {
        return conventions.expansion;
    }

    /**
     * How the growth of the pipe is counted.
     *
     * @return the convention
     */
    public PipeCredit pipeCredit() {
        return conventions.pipeCredit;
    }

    /**
     * How much water is kept in reserve.
     *
     * @return the convention
     */
    public WaterReserve reserve() {
        return conventions.reserve;
    }

    /**
     * How the cold pressure follows from the static head.
     *
     * @return the convention
     */
    public ColdPressureRule coldPressure() {
        return conventions.coldPressure;
    }

    /**
     * How the final pressure follows from the relief setting.
     *
     * @return the convention
     */
    public FinalPressureRule finalPressure() {
        return conventions.finalPressure;
    }

    /**
     * What a vessel of a kind is charged to.
     *
     * @param kind diaphragm, bladder or plain steel
     * @return the convention: the method's own, or the usual one for the kind
     */
    public ChargeRule charge(VesselKind kind) {
        return conventions.charge == null ? ChargeRule.usualFor(kind) : conventions.charge;
    }

    /**
     * The air pressure that counts when the site's is not given.
     *
     * @return the convention
     */
    public AtmosphereRule atmosphere() {
        return conventions.atmosphere;
    }

    /**
     * For an open tank, its volume for each volume of net expansion.
     *
     * @return the allowance, or null if the method has no open tanks
     */
    public @Nullable Constant openAllowance() {
        return conventions.openAllowance;
    }

    /**
     * What the method says about itself with an answer.
     *
     * @return the remarks, those that hold for some jobs only among them
     */
    List<MethodRemark> remarks() {
        return conventions.remarks;
    }

    /**
     * Where the method as a whole comes from.
     *
     * @return its source
     */
    public Source source() {
        return conventions.source;
    }

    /**
     * A copy under another name, for a house rule.
     *
     * @param name name and title of the copy
     * @return the copy
     */
    public Method named(String name) {
        Builder copy = new Builder(this);
        copy.name = name;
        copy.title = name + " (from " + title() + ")";
        return copy.build();
    }

    /**
     * A copy that means another temperature by hot.
     *
     * @param hotBasis the convention
     * @return the copy
     */
    public Method with(HotBasis hotBasis) {
        return new Builder(this).hotBasis(hotBasis).build();
    }

    /**
     * A copy with another expansion.
     *
     * @param expansion the convention
     * @return the copy
     */
    public Method with(ExpansionRule expansion) {
        return new Builder(this).expansion(expansion).build();
    }

    /**
     * A copy with another pipe credit.
     *
     * @param pipeCredit the convention
     * @return the copy
     */
    public Method with(PipeCredit pipeCredit) {
        return new Builder(this).pipeCredit(pipeCredit).build();
    }

    /**
     * A copy with another reserve.
     *
     * @param reserve the convention
     * @return the copy
     */
    public Method with(WaterReserve reserve) {
        return new Builder(this).reserve(reserve).build();
    }

    /**
     * A copy with another cold pressure.
     *
     * @param coldPressure the convention
     * @return the copy
     */
    public Method with(ColdPressureRule coldPressure) {
        return new Builder(this).coldPressure(coldPressure).build();
    }

    /**
     * A copy with another final pressure.
     *
     * @param finalPressure the convention
     * @return the copy
     */
    public Method with(FinalPressureRule finalPressure) {
        return new Builder(this).finalPressure(finalPressure).build();
    }

    /**
     * A copy with another gas charge for every kind of vessel.
     *
     * @param charge the convention
     * @return the copy
     */
    public Method with(ChargeRule charge) {
        return new Builder(this).charge(charge).build();
    }

    /**
     * A copy with the gas charge of another method.
     *
     * @param other the method to take the charge of each kind of vessel from
     * @return the copy
     */
    Method withChargeOf(Method other) {
        Builder copy = new Builder(this);
        copy.charge = other.conventions.charge;
        return copy.build();
    }

    /**
     * A copy with another air pressure.
     *
     * @param atmosphere the convention
     * @return the copy
     */
    public Method with(AtmosphereRule atmosphere) {
        return new Builder(this).atmosphere(atmosphere).build();
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
                + pipeCredit() + "\n  reserve: " + reserve() + "\n  cold pressure: " + coldPressure()
                + "\n  final pressure: " + finalPressure();
    }

    /** Collects the conventions of a method. Not for many threads. */
    public static final class Builder {

        private String name;
        private String title;
        private final Source source;
        private HotBasis hotBasis = HotBasis.HIGHEST_OPERATING;
        private Set<VesselKind> kinds = EnumSet.noneOf(VesselKind.class);
        private @Nullable ExpansionRule expansion;
        private @Nullable PipeCredit pipeCredit;
        private WaterReserve reserve = WaterReserve.NONE;
        private @Nullable ColdPressureRule coldPressure;
        private @Nullable FinalPressureRule finalPressure;
        private @Nullable ChargeRule charge;
        private AtmosphereRule atmosphere = AtmosphereRule.STANDARD;
        private @Nullable Constant openAllowance;
        private final List<MethodRemark> remarks = new ArrayList<>();

        private Builder(String name, String title, Source source) {
            this.name = name;
            this.title = title;
            this.source = source;
        }

        private Builder(Method method) {
            this(method.name(), method.title(), method.source());
            hotBasis = method.hotBasis();
            kinds = method.kinds();
            expansion = method.expansion();
            pipeCredit = method.pipeCredit();
            reserve = method.reserve();
            coldPressure = method.coldPressure();
            finalPressure = method.finalPressure();
            charge = method.conventions.charge;
            atmosphere = method.atmosphere();
            openAllowance = method.openAllowance();
            remarks.addAll(method.remarks());
        }

        /**
         * Sets the kinds of vessel.
         *
         * @param first a kind
         * @param more more kinds
         * @return this builder
         */
        public Builder vessels(VesselKind first, VesselKind... more) {
            kinds = EnumSet.of(first, more);
            return this;
        }

        /**
         * Sets which temperature is meant by hot; the highest operating one if not set.
         *
         * @param hotBasis the convention
         * @return this builder
         */
        public Builder hotBasis(HotBasis hotBasis) {
            this.hotBasis = hotBasis;
            return this;
        }

        /**
         * Sets the expansion. Required.
         *
         * @param expansion the convention
         * @return this builder
         */
        public Builder expansion(ExpansionRule expansion) {
            this.expansion = expansion;
            return this;
        }

        /**
         * Sets the pipe credit. Required.
         *
         * @param pipeCredit the convention
         * @return this builder
         */
        public Builder pipeCredit(PipeCredit pipeCredit) {
            this.pipeCredit = pipeCredit;
            return this;
        }

        /**
         * Sets the reserve; none if not set.
         *
         * @param reserve the convention
         * @return this builder
         */
        public Builder reserve(WaterReserve reserve) {
            this.reserve = reserve;
            return this;
        }

        /**
         * Sets the cold pressure. Required.
         *
         * @param coldPressure the convention
         * @return this builder
         */
        public Builder coldPressure(ColdPressureRule coldPressure) {
            this.coldPressure = coldPressure;
            return this;
        }

        /**
         * Sets the final pressure. Required.
         *
         * @param finalPressure the convention
         * @return this builder
         */
        public Builder finalPressure(FinalPressureRule finalPressure) {
            this.finalPressure = finalPressure;
            return this;
        }

        /**
         * Sets the gas charge for every kind of vessel; the usual one for the kind if not set.
         *
         * @param charge the convention
         * @return this builder
         */
        public Builder charge(ChargeRule charge) {
            this.charge = charge;
            return this;
        }

        /**
         * Sets the air pressure; the standard atmosphere if not set.
         *
         * @param atmosphere the convention
         * @return this builder
         */
        public Builder atmosphere(AtmosphereRule atmosphere) {
            this.atmosphere = atmosphere;
            return this;
        }

        /**
         * Sets the allowance for open tanks.
         *
         * @param allowance tank volume for each volume of net expansion
         * @return this builder
         */
        public Builder openAllowance(Constant allowance) {
            this.openAllowance = allowance;
            return this;
        }

        /**
         * Adds what is to be said with every answer.
         *
         * @param text one sentence for people
         * @param source where it comes from
         * @return this builder
         */
        public Builder remark(String text, Source source) {
            return remark(MethodRemark.always(text, source));
        }

        Builder remark(MethodRemark remark) {
            remarks.add(remark);
            return this;
        }

        /**
         * Makes the method.
         *
         * @return the method
         * @throws IllegalStateException if a required convention or the kinds of vessel were not set, or an open tank has no
         *     allowance
         */
        public Method build() {
            if (kinds.isEmpty() || (kinds.contains(VesselKind.OPEN) && openAllowance == null)) {
                throw new IllegalStateException("method " + name
                        + " must name its kinds of vessel, and an allowance if open tanks are among them");
            }
            return new Method(new Conventions(
                    name,
                    title,
                    hotBasis,
                    Collections.unmodifiableSet(EnumSet.copyOf(kinds)),
                    required(expansion, "an expansion rule"),
                    required(pipeCredit, "a pipe credit"),
                    reserve,
                    required(coldPressure, "a cold pressure rule"),
                    required(finalPressure, "a final pressure rule"),
                    charge,
                    atmosphere,
                    openAllowance,
                    List.copyOf(remarks),
                    source));
        }

        private <T> T required(@Nullable T convention, String what) {
            if (convention == null) {
                throw new IllegalStateException("method " + name + " must have " + what);
            }
            return Objects.requireNonNull(convention);
        }
    }
}
