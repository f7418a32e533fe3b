package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ullage.fluids.GlycolCases.vol;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;

/** Fluids survive being written and read. */
class FluidSerializationTest {

    private static LoopFluid copy(LoopFluid fluid) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(fluid);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (LoopFluid) in.readObject();
        }
    }

    private static void sameAnswer(LoopFluid fluid) throws IOException, ClassNotFoundException {
        LoopFluid copy = copy(fluid);
        assertThat(copy.specificVolumeSi(330, 3e5)).isEqualTo(fluid.specificVolumeSi(330, 3e5));
        assertThat(copy).hasToString(fluid.toString());
    }

    @Test
    void glycol() throws IOException, ClassNotFoundException {
        for (GlycolSolution fluid : Glycol.PROPYLENE.models(vol(33))) {
            assertThat(copy(fluid)).isEqualTo(fluid);
            sameAnswer(fluid);
        }
    }

    @Test
    void userFluids() throws IOException, ClassNotFoundException {
        Source source = Source.commonPractice("test");
        sameAnswer(UserFluidTable.read("x", "temperature [degC],density [kg/m3]\n0,900\n50,880\n100,850", source)
                .fluid());
        sameAnswer(UserFluid.ofFunction(
                "f",
                t -> Density.kilogramsPerCubicMetre(1200 - t.si()),
                Temperature.celsius(0),
                Temperature.celsius(90),
                source));
    }
}
