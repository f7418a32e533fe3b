package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * What is to be sized and by which method, as a file has it: the mirror of {@link SizingJob}. {@link #job} makes it a job again. Immutable.
 *
 * <p>The fluid is text, because this module knows no fluids: the caller hands over what reads it.
 *
 * @param method short name of the method
 * @param vessel kind of vessel
 * @param acceptanceLimit largest share of the vessel that may be water, or null if not recorded
 * @param contents fluid in the loop, cold, without the vessel
 * @param pipe steel, copper, none (taken as rigid), or a name of its own, or null if not recorded
 * @param pipeExpansion linear thermal expansion of a pipe with a name of its own, or null if not recorded
 * @param fluid the fluid as the caller's reader takes it
 * @param fluidModel model that described it when the job was recorded, or null if not recorded
 * @param cold lowest (or fill) temperature, or null if not recorded
 * @param hot highest operating temperature, or null if not recorded
 * @param mean mean of flow and return at full output, or null if not recorded
 * @param safety temperature at which the safety device acts, or null if not recorded
 * @param coldPressure lowest pressure at the vessel, or null if not recorded
 * @param finalPressure highest pressure at the vessel, or null if not recorded
 * @param staticHead height of the highest point above the vessel, or null if not recorded
 * @param reliefSetting setting of the relief valve, or null if not recorded
 * @param preCharge gas charge with the water side empty, or null if not recorded
 * @param atmosphere pressure of the air at the site, or null if not recorded
 * @param reliefMargin margin below the relief setting that the valve's instructions ask for, or null if not recorded
 * @param place where the vessel stands, or null if not recorded
 * @param collectors fluid in the collectors of a solar loop, or null if not recorded
 * @param boilingPipe fluid in the pipes that may boil empty, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record JobRecord(
        String method,
        VesselKind vessel,
        @Nullable VolumeFraction acceptanceLimit,
        Volume contents,
        @Nullable String pipe,
        @Nullable LinearExpansion pipeExpansion,
        String fluid,
        @Nullable String fluidModel,
        @Nullable Temperature cold,
        @Nullable Temperature hot,
        @Nullable Temperature mean,
        @Nullable Temperature safety,
        @Nullable GaugePressure coldPressure,
        @Nullable GaugePressure finalPressure,
        @Nullable Length staticHead,
        @Nullable GaugePressure reliefSetting,
        @Nullable GaugePressure preCharge,
        @Nullable AbsolutePressure atmosphere,
        @Nullable PressureDifference reliefMargin,
        @Nullable PlaceRecord place,
        @Nullable Volume collectors,
        @Nullable Volume boilingPipe,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param method short name of the method
     * @param vessel kind of vessel
     * @param acceptanceLimit largest share of the vessel that may be water, or null if not recorded
     * @param contents fluid in the loop, cold, without the vessel
     * @param pipe steel, copper, none (taken as rigid), or a name of its own, or null if not recorded
     * @param pipeExpansion linear thermal expansion of a pipe with a name of its own, or null if not recorded
     * @param fluid the fluid as the caller's reader takes it
     * @param fluidModel model that described it when the job was recorded, or null if not recorded
     * @param cold lowest (or fill) temperature, or null if not recorded
     * @param hot highest operating temperature, or null if not recorded
     * @param mean mean of flow and return at full output, or null if not recorded
     * @param safety temperature at which the safety device acts, or null if not recorded
     * @param coldPressure lowest pressure at the vessel, or null if not recorded
     * @param finalPressure highest pressure at the vessel, or null if not recorded
     * @param staticHead height of the highest point above the vessel, or null if not recorded
     * @param reliefSetting setting of the relief valve, or null if not recorded
     * @param preCharge gas charge with the water side empty, or null if not recorded
     * @param atmosphere pressure of the air at the site, or null if not recorded
     * @param reliefMargin margin below the relief setting that the valve's instructions ask for, or null if not recorded
     * @param place where the vessel stands, or null if not recorded
     * @param collectors fluid in the collectors of a solar loop, or null if not recorded
     * @param boilingPipe fluid in the pipes that may boil empty, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if method or kind of vessel or contents or fluid is missing
     */
    public JobRecord {
        method = Kept.required("method", method, "a sizing job");
        Kept.present("kind of vessel", vessel, "a sizing job");
        Kept.present("contents", contents, "a sizing job");
        pipe = Kept.text(pipe);
        fluid = Kept.required("fluid", fluid, "a sizing job");
        fluidModel = Kept.text(fluidModel);
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Records a job with its method.
     *
     * @param job the job
     * @param method the method
     * @param fluid the fluid as the caller's reader takes it, such as {@code propylene glycol 30 vol%/melinder}
     * @return the record
     */
    public static JobRecord of(SizingJob job, Method method, String fluid) {
        return JobForm.of(job, method, fluid);
    }

    /**
     * The job.
     *
     * @param fluids reads the fluid
     * @return ready to be sized by {@link #sizingMethod()}
     * @throws OutOfRangeException if a value is not allowed, the pipe is not known or the fluid that was read is described by another
     *     model than the one recorded
     * @throws MissingInputException if a pipe of its own has no expansion
     */
    public SizingJob job(Function<String, ? extends LoopFluid> fluids) {
        return JobForm.job(this, fluids);
    }

    /**
     * The method.
     *
     * @return the published method of that name
     * @throws OutOfRangeException if there is none
     */
    public Method sizingMethod() {
        return Methods.named(method);
    }
}
