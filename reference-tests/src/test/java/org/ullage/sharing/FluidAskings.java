package org.ullage.sharing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.fluids.Expansion;
import org.ullage.fluids.FluidComparison;
import org.ullage.fluids.FluidSeries;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.Glycol;
import org.ullage.fluids.PropyleneGlycol;
import org.ullage.fluids.UserFluidTable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.VolumeFraction;

/** What the fluid models say. */
final class FluidAskings {

    private static final Temperature FROM = Temperature.celsius(20);
    private static final Temperature TO = Temperature.celsius(70);
    private static final VolumeFraction THIRD = VolumeFraction.percent(33);

    private static final UserFluidTable TABLE = UserFluidTable.read(
            "yard brine",
            "temperature [degC],density [kg/m3]\n0,1030\n20,1024\n50,1010\n80,993\n",
            Source.commonPractice("invented for a test"));

    private FluidAskings() {}

    static List<Asking> all() {
        List<Asking> askings = new ArrayList<>();
        fluids().forEach(fluid -> about(fluid, askings));
        for (Glycol glycol : Glycol.values()) {
            askings.add(new Asking("freezing of " + glycol, glycol::freezing));
            askings.add(
                    new Asking("coldest of " + glycol, () -> glycol.freezing().pointAt(THIRD)));
            askings.add(new Asking("corrections of " + glycol, () -> (Serializable) glycol.tableCorrections()));
            askings.add(new Asking("limits of " + glycol, () -> (Serializable) glycol.temperatureLimits()));
            askings.add(new Asking("comparison of " + glycol, () -> FluidComparison.of(glycol, THIRD, FROM, TO)));
        }
        askings.add(new Asking("water compared", () -> FluidComparison.ofWater(FROM, TO)));
        askings.add(new Asking(
                "water compared, printed",
                () -> FluidComparison.ofWater(FROM, TO).text(UnitSystem.IP)));
        askings.add(new Asking(
                "estimate by Raoult", () -> PropyleneGlycol.volumePercent(30).raoult()));
        askings.add(new Asking("table of the user's own", () -> TABLE));
        return askings;
    }

    private static List<LoopFluid> fluids() {
        List<LoopFluid> fluids = new ArrayList<>(Fluids.waterModels());
        for (Glycol glycol : Glycol.values()) {
            fluids.addAll(glycol.models(THIRD));
        }
        fluids.add(TABLE.fluid());
        return fluids;
    }

    private static void about(LoopFluid fluid, List<Asking> askings) {
        String name = fluid.toString();
        askings.add(new Asking(name, () -> fluid));
        askings.add(new Asking("expansion of " + name, () -> Expansion.between(fluid, FROM, TO)));
        askings.add(new Asking("density of " + name, () -> Density.ofSi(1 / fluid.specificVolumeSi(FROM.si(), 3e5))));
        askings.add(new Asking("series of " + name, () -> FluidSeries.of(fluid, FROM, TO, 40)));
    }
}
