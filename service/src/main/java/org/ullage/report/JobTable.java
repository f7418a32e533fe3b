package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselType;

/** What was given for a sizing, as a table. */
final class JobTable {

    private final UnitSystem system;
    private final List<List<String>> rows = new ArrayList<>();

    private JobTable(UnitSystem system) {
        this.system = system;
    }

    static Table of(SizingJob job, UnitSystem system) {
        JobTable table = new JobTable(system);
        table.loop(job.loop());
        table.temperatures(job.temperatures());
        table.vessel(job.vessel());
        table.pressures(job.pressures());
        return new Table("What was given", List.of(Column.words("of the job"), Column.words("value")), table.rows);
    }

    private void loop(Loop loop) {
        quantity("contents of the loop, without the vessel", loop.contents());
        words("fluid", loop.fluid().name() + ", by " + loop.fluid().model());
        words("pipe", loop.pipe() == null ? "not given" : loop.pipe().name());
    }

    private void temperatures(LoopTemperatures temperatures) {
        quantity("lowest temperature (fill)", temperatures.cold());
        quantity("highest temperature in operation", temperatures.hot());
        quantity("mean of flow and return", temperatures.mean());
        quantity("temperature the safety device acts at", temperatures.safety());
    }

    private void vessel(VesselType vessel) {
        words("vessel wanted", vessel.kind().word());
        quantity("acceptance limit of the vessel", vessel.acceptanceLimit());
    }

    private void pressures(PressureInputs pressures) {
        quantity("highest point of the loop above the vessel", pressures.staticHead());
        quantity("relief valve setting, gauge", pressures.reliefSetting());
        quantity("margin below the relief setting", pressures.reliefMargin());
        quantity("pressure at the vessel, cold, gauge", pressures.coldPressure());
        quantity("pressure at the vessel, hot, gauge", pressures.finalPressure());
        quantity("gas charge, gauge", pressures.preCharge());
        quantity("pressure of the air", pressures.atmosphere());
    }

    private void quantity(String label, @Nullable Quantity<?, ?> quantity) {
        if (quantity != null) {
            words(label, quantity.text(system));
        }
    }

    private void words(String label, String words) {
        rows.add(List.of(label, words));
    }
}
