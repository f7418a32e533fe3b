package org.ullage.operation;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/** Loops and vessels for the tests of this package; air at 1 bar keeps the numbers round. */
final class InUse {

    static final AbsolutePressure ONE_BAR = AbsolutePressure.bar(1);

    /** Near water at 60 degC. */
    static final SpringyFluid SPRINGY = new SpringyFluid(5e-4, 4.5e-10);

    private InUse() {}

    static InstalledVessel vessel(String name, double litres, double bar) {
        return InstalledVessel.of(name, Volume.litres(litres), GaugePressure.bar(bar));
    }

    static VesselBank bank(InstalledVessel... vessels) {
        return new VesselBank(java.util.List.of(vessels), ONE_BAR);
    }

    static Reading reading(double bar, double celsius) {
        return new Reading(GaugePressure.bar(bar), Temperature.celsius(celsius));
    }

    static LoopInUse loop(double litres, PipeMaterial pipe, LoopFluid fluid, VesselBank bank, Reading fill) {
        return LoopInUse.of(Loop.withContents(Volume.litres(litres)).pipe(pipe).filledWith(fluid), bank, fill);
    }

    static Object throughAStream(Object value) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return in.readObject();
        }
    }
}
