package org.ullage.operation;

import java.io.Serializable;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.PipeCredit;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * The loop's side of the mass balance on bare SI numbers: how much room the vessels must give at a loop temperature and pressure.
 *
 * <pre>M = V_s (1 + 3 alpha (T - T_1)) (1 + k (p - p_1)) / v(T, p) + m_vessels</pre>
 */
final class LoopBalance implements Serializable {

    private static final long serialVersionUID = 1L;

    final LoopFluid fluid;
    final double contents;
    final double alpha;
    final double stretch;
    final double fillKelvins;
    final double fillPascals;
    final double fillWater;
    final double mass;
    /** Whether the room asked for is the same at all pressures. */
    final boolean isRigid;

    private final VesselWater.Kind kind;

    /** Of the water that was in the vessels already, unless it is as warm as the loop. */
    private final double vesselKelvins;

    /** Its specific volume, if the fluid's does not depend on the pressure. */
    private final double vesselVolume;

    LoopBalance(LoopInUse inUse, BankNumbers vessels) {
        PipeMaterial pipe = inUse.loop().pipe();
        PipeWall wall = inUse.wall();
        Temperature own = inUse.vesselWater().temperature();
        Reading known = inUse.known();
        double knownPascals = inUse.bank().absolute(known.pressure());
        this.fluid = inUse.loop().fluid();
        this.contents = inUse.loop().contents().si();
        this.alpha = pipe == null ? 0 : pipe.linearExpansion().si();
        this.stretch = wall == null ? 0 : wall.stretchSi();
        this.fillKelvins = inUse.fill().temperature().si();
        this.fillPascals = inUse.bank().absolute(inUse.fill().pressure());
        this.fillWater = vessels.water(fillPascals);
        this.kind = inUse.vesselWater().kind();
        this.vesselKelvins = own == null ? fillKelvins : own.si();
        this.vesselVolume = fluid.isCompressible() || kind == VesselWater.Kind.AS_WARM_AS_LOOP
                ? 0
                : fluid.specificVolumeSi(vesselKelvins, fillPascals);
        this.isRigid = !fluid.isCompressible() && stretch == 0;
        this.mass = massWith(known.temperature().si(), knownPascals, vessels.water(knownPascals));
        if (!Double.isFinite(mass)) {
            throw new OutOfRangeException(
                    "contents of the loop",
                    inUse.loop().contents().toString(),
                    "so small that their mass and that in the vessels is a finite number",
                    "check the numbers and their units");
        }
    }

    /** Volume of the water side without the vessels. */
    double room(double kelvins, double pascals) {
        return contents
                * (1 + PipeCredit.growth(alpha, kelvins - fillKelvins))
                * (1 + stretch * (pascals - fillPascals));
    }

    /** Mass in the loop without the vessels. */
    double loopMass(double kelvins, double pascals) {
        return room(kelvins, pascals) / fluid.specificVolumeSi(kelvins, pascals);
    }

    /** Room the vessels must give so that all of the mass is somewhere; negative if mass is missing even without them. */
    double demand(double kelvins, double pascals) {
        double loopVolume = fluid.specificVolumeSi(kelvins, pascals);
        double rest = mass - room(kelvins, pascals) / loopVolume;
        if (kind == VesselWater.Kind.AS_WARM_AS_LOOP) {
            return rest * loopVolume;
        }
        double ownVolume = ownVolume(pascals);
        double kept = fillWater / ownVolume;
        return kind == VesselWater.Kind.OWN_TEMPERATURE || rest < kept
                ? rest * ownVolume
                : fillWater + (rest - kept) * loopVolume;
    }

    /** Mass in loop and vessels when the vessels hold a volume. */
    double massWith(double kelvins, double pascals, double water) {
        double loopVolume = fluid.specificVolumeSi(kelvins, pascals);
        double inLoop = room(kelvins, pascals) / loopVolume;
        if (kind == VesselWater.Kind.AS_WARM_AS_LOOP) {
            return inLoop + water / loopVolume;
        }
        double ownVolume = ownVolume(pascals);
        return kind == VesselWater.Kind.OWN_TEMPERATURE || water < fillWater
                ? inLoop + water / ownVolume
                : inLoop + fillWater / ownVolume + (water - fillWater) / loopVolume;
    }

    private double ownVolume(double pascals) {
        return fluid.isCompressible() ? fluid.specificVolumeSi(vesselKelvins, pascals) : vesselVolume;
    }

    /** How warm the water is that was in the vessels already. */
    double ownKelvins(double kelvins) {
        return kind == VesselWater.Kind.AS_WARM_AS_LOOP ? kelvins : vesselKelvins;
    }

    boolean isLiquid(double kelvins, double pascals) {
        return fluid.isLiquidSi(Math.max(kelvins, ownKelvins(kelvins)), pascals);
    }

    /** Lowest pressure at which the fluid is liquid, in the loop and in the vessels. */
    double boilingPressure(double kelvins) {
        return fluid.vapourPressureSi(Math.max(kelvins, ownKelvins(kelvins)));
    }
}
