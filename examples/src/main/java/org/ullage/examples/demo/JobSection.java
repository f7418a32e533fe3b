package org.ullage.examples.demo;

import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.quantity.Quantity;

/** What was given. */
record JobSection(Sizing sizing) implements Section {

    @Override
    public void print(Page page) {
        SizingJob job = sizing.job();
        page.heading("The job");
        page.valueHead();
        loop(page, job.loop());
        temperatures(page, job.temperatures());
        page.words("Vessel wanted", job.vessel().kind().word());
        pressures(page, job.pressures());
    }

    private static void loop(Page page, Loop loop) {
        page.value("Contents of the loop, without the vessel", loop.contents());
        page.words("Fluid", loop.fluid().name() + ", by " + loop.fluid().model());
        PipeMaterial pipe = loop.pipe();
        page.words("Pipe", pipe == null ? "not given" : pipe.name());
    }

    private static void temperatures(Page page, LoopTemperatures temperatures) {
        ifGiven(page, "Lowest temperature (fill)", temperatures.cold());
        ifGiven(page, "Highest temperature in operation", temperatures.hot());
        ifGiven(page, "Mean of flow and return", temperatures.mean());
        ifGiven(page, "Temperature the safety device acts at", temperatures.safety());
    }

    private void pressures(Page page, PressureInputs pressures) {
        ifGiven(page, "Highest point of the loop above the vessel", pressures.staticHead());
        ifGiven(page, "Relief valve setting, gauge", pressures.reliefSetting());
        page.value("Altitude of the site", DemoBuilding.ALTITUDE);
        page.value("Pressure of the air there", sizing.atmosphere());
        page.line("  " + StandardAtmosphere.SOURCE);
    }

    private static void ifGiven(Page page, String label, @Nullable Quantity<?, ?> quantity) {
        if (quantity != null) {
            page.value(label, quantity);
        }
    }
}
