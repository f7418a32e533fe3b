package org.ullage.fuzz;

import java.util.List;
import org.ullage.comparison.ConventionShares;
import org.ullage.comparison.Explanation;
import org.ullage.comparison.MethodComparison;
import org.ullage.comparison.VesselByFluid;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/** Every method with every kind of vessel and every fluid, up to the required volume; now and then workings and comparisons. */
final class SizingTarget implements Target {

    /** Room for the rounding of a few dozen operations. */
    private static final double ROUNDING = 1e-9;

    @Override
    public String name() {
        return "sizing";
    }

    @Override
    public double share() {
        return 0.145;
    }

    @Override
    public Object ask(Draw draw) {
        Method method = Pool.method(draw);
        SizingJob job = Pool.job(method, draw);
        Sizing sizing = method.size(job);
        checkNumbers(sizing);
        checkTwice(sizing);
        checkGrowth(sizing, draw);
        double extra = draw.between(0, 1);
        if (extra < 0.01) {
            Finite.check(sizing.workings().text(UnitSystem.SI));
            Finite.check(sizing.workings().text(UnitSystem.IP));
        } else if (extra < 0.012) {
            return sizing;
        } else if (extra < 0.0125) {
            return MethodComparison.of(job);
        } else if (extra < 0.0135) {
            return Explanation.between(job, method, Pool.method(draw));
        } else if (extra < 0.014) {
            return ConventionShares.between(job, method, Pool.method(draw));
        } else if (extra < 0.0145) {
            return VesselByFluid.of(job, method, List.of(Pool.fluid(draw), Pool.fluid(draw), Pool.fluid(draw)));
        }
        return null;
    }

    private static void checkNumbers(Sizing sizing) {
        double required =
                Finite.check("required volume", sizing.requiredVolume().si());
        Finite.check("gas law volume", sizing.gasLawVolume().si());
        Finite.check("expansion", sizing.expansionVolume().si());
        Finite.check("reserve", sizing.reserveVolume().si());
        Finite.check("vapour", sizing.vapourVolume().si());
        Finite.check("acceptance", sizing.acceptanceVolume().si());
        Finite.check("charge", sizing.preCharge().si());
        Finite.check("cold pressure", sizing.coldPressure().si());
        Finite.check("final pressure", sizing.finalPressure().si());
        if (required <= 0) {
            throw new Fault("a required volume of " + required + " m3");
        }
    }

    private static void checkTwice(Sizing sizing) {
        double again = sizing.method().size(sizing.job()).requiredVolume().si();
        double first = sizing.requiredVolume().si();
        if (Double.doubleToLongBits(again) != Double.doubleToLongBits(first)) {
            throw new Fault("the same job twice: " + first + " and " + again + " m3");
        }
    }

    /** More contents need no smaller vessel. */
    private static void checkGrowth(Sizing sizing, Draw draw) {
        if (!draw.chance(0.2)) {
            return;
        }
        SizingJob job = sizing.job();
        Volume more = job.loop().contents().times(draw.between(1, 3));
        double larger = sizing.method()
                .size(job.with(job.loop().holding(more)))
                .requiredVolume()
                .si();
        if (larger < sizing.requiredVolume().si() * (1 - ROUNDING)) {
            throw new Fault("contents of " + more + " need " + larger + " m3, fewer need " + sizing.requiredVolume());
        }
    }
}
