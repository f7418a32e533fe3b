package org.ullage.method;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;

/** Collects the conventions of a method. Not for many threads. */
public final class MethodBuilder {

    private String name;
    private String title;
    private final Source source;
    private HotBasis hotBasis = HotBasis.HIGHEST_OPERATING;
    private Set<VesselKind> kinds = EnumSet.noneOf(VesselKind.class);
    private @Nullable ExpansionRule expansion;
    private @Nullable PipeCredit pipeCredit;
    private WaterReserve reserve = WaterReserve.NONE;
    private VapourAllowance vapour = VapourAllowance.NONE;
    private @Nullable Constant leastVolumePerWater;
    private @Nullable ColdPressureRule coldPressure;
    private @Nullable FinalPressureRule finalPressure;
    private @Nullable ChargeRule charge;
    private AtmosphereRule atmosphere = AtmosphereRule.STANDARD;
    private @Nullable Constant openAllowance;
    private GasTemperatures gasTemperatures = GasTemperatures.ISOTHERMAL;
    private final List<MethodRemark> remarks = new ArrayList<>();

    MethodBuilder(String name, String title, Source source) {
        this.name = name;
        this.title = title;
        this.source = source;
    }

    MethodBuilder(Method method, MethodConventions parts) {
        this(method.name(), method.title(), method.source());
        hotBasis = method.hotBasis();
        kinds = method.kinds();
        expansion = method.expansion();
        pipeCredit = method.pipeCredit();
        reserve = method.reserve();
        vapour = method.vapour();
        leastVolumePerWater = method.leastVolumePerWater();
        coldPressure = method.coldPressure();
        finalPressure = method.finalPressure();
        charge = parts.charge();
        atmosphere = method.atmosphere();
        gasTemperatures = method.gasTemperatures();
        openAllowance = method.openAllowance();
        remarks.addAll(method.remarks());
    }

    MethodBuilder renamed(String newName, String newTitle) {
        this.name = newName;
        this.title = newTitle;
        return this;
    }

    /**
     * Sets the kinds of vessel.
     *
     * @param first a kind
     * @param more more kinds
     * @return this builder
     */
    public MethodBuilder vessels(VesselKind first, VesselKind... more) {
        kinds = EnumSet.of(first, more);
        return this;
    }

    /**
     * Sets which temperature is meant by hot; the highest operating one if not set.
     *
     * @param hotBasis the convention
     * @return this builder
     */
    public MethodBuilder hotBasis(HotBasis hotBasis) {
        this.hotBasis = hotBasis;
        return this;
    }

    /**
     * Sets the expansion. Required.
     *
     * @param expansion the convention
     * @return this builder
     */
    public MethodBuilder expansion(ExpansionRule expansion) {
        this.expansion = expansion;
        return this;
    }

    /**
     * Sets the pipe credit. Required.
     *
     * @param pipeCredit the convention
     * @return this builder
     */
    public MethodBuilder pipeCredit(PipeCredit pipeCredit) {
        this.pipeCredit = pipeCredit;
        return this;
    }

    /**
     * Sets the reserve; none if not set.
     *
     * @param reserve the convention
     * @return this builder
     */
    public MethodBuilder reserve(WaterReserve reserve) {
        this.reserve = reserve;
        return this;
    }

    /**
     * Sets what counts as turned to vapour; nothing if not set.
     *
     * @param vapour the convention
     * @return this builder
     */
    public MethodBuilder vapour(VapourAllowance vapour) {
        this.vapour = vapour;
        return this;
    }

    /**
     * Sets the least nominal volume for each volume of water taken in; none if not set.
     *
     * @param least the limit
     * @return this builder
     */
    public MethodBuilder leastVolumePerWater(@Nullable Constant least) {
        this.leastVolumePerWater = least;
        return this;
    }

    /**
     * Sets the cold pressure. Required.
     *
     * @param coldPressure the convention
     * @return this builder
     */
    public MethodBuilder coldPressure(ColdPressureRule coldPressure) {
        this.coldPressure = coldPressure;
        return this;
    }

    /**
     * Sets the final pressure. Required.
     *
     * @param finalPressure the convention
     * @return this builder
     */
    public MethodBuilder finalPressure(FinalPressureRule finalPressure) {
        this.finalPressure = finalPressure;
        return this;
    }

    /**
     * Sets the gas charge for every kind of vessel; the usual one for the kind if not set.
     *
     * @param charge the convention
     * @return this builder
     */
    public MethodBuilder charge(@Nullable ChargeRule charge) {
        this.charge = charge;
        return this;
    }

    /**
     * Sets the air pressure; the standard atmosphere if not set.
     *
     * @param atmosphere the convention
     * @return this builder
     */
    public MethodBuilder atmosphere(AtmosphereRule atmosphere) {
        this.atmosphere = atmosphere;
        return this;
    }

    /**
     * Sets the temperatures of the gas; the same throughout if not set.
     *
     * @param gasTemperatures the convention
     * @return this builder
     */
    public MethodBuilder gasTemperatures(GasTemperatures gasTemperatures) {
        this.gasTemperatures = gasTemperatures;
        return this;
    }

    /**
     * Sets the allowance for open tanks.
     *
     * @param allowance tank volume for each volume of net expansion
     * @return this builder
     */
    public MethodBuilder openAllowance(@Nullable Constant allowance) {
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
    public MethodBuilder remark(String text, Source source) {
        return remark(MethodRemark.always(text, source));
    }

    /**
     * Adds what is to be said in certain cases.
     *
     * @param remark when, and what
     * @return this builder
     */
    public MethodBuilder remark(MethodRemark remark) {
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
            throw new IllegalStateException(
                    "method " + name + " must name its kinds of vessel, and an allowance if open tanks are among them");
        }
        return new Method(new MethodConventions(
                name,
                title,
                hotBasis,
                Collections.unmodifiableSet(EnumSet.copyOf(kinds)),
                required(expansion, "an expansion rule"),
                required(pipeCredit, "a pipe credit"),
                reserve,
                vapour,
                leastVolumePerWater,
                required(coldPressure, "a cold pressure rule"),
                required(finalPressure, "a final pressure rule"),
                charge,
                atmosphere,
                gasTemperatures,
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
