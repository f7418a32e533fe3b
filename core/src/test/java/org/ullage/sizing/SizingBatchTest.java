package org.ullage.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselType;

class SizingBatchTest {

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));
    private static final double[] CONTENTS = {0.5, 1, 2};
    private static final double[] HEADS = {5, 10, 40};

    private static SizingBatch batch() {
        return SizingBatch.of(Methods.ASHRAE, JOB)
                .varying(SizingInput.CONTENTS, CONTENTS)
                .varying(SizingInput.STATIC_HEAD, HEADS);
    }

    private static double[] volumes(SizingBatch batch) {
        double[] volumes = new double[batch.rows()];
        batch.requiredVolumes(volumes);
        return volumes;
    }

    @Test
    void everyRowIsTheMethodsOwnAnswer() {
        double[] volumes = new double[3];
        assertThat(batch().requiredVolumes(volumes)).isEqualTo(1);
        for (int row = 0; row < 2; row++) {
            assertThat(volumes[row])
                    .isEqualTo(Methods.ASHRAE
                            .size(batch().job(row))
                            .requiredVolume()
                            .si());
            assertThat(batch().refusal(row)).isEmpty();
        }
        assertThat(batch().job(1).loop().contents().si()).isEqualTo(1);
    }

    @Test
    void aRowThatIsRefusedSaysWhy() {
        double[] volumes = volumes(batch());
        assertThat(volumes[2]).isEqualTo(SizingBatch.REFUSED);
        assertThat(batch().refusal(2))
                .hasValueSatisfying(reason -> assertThat(reason).startsWith("final pressure 3.71325 bar abs"));
    }

    @Test
    void withoutColumnsItIsTheJob() {
        SizingBatch batch = SizingBatch.of(Methods.ASHRAE, JOB);
        assertThat(batch.rows()).isEqualTo(1);
        assertThat(volumes(batch))
                .containsExactly(Methods.ASHRAE.size(JOB).requiredVolume().si());
    }

    @Test
    void columnsAreCopiedAndMayBeReplaced() {
        double[] column = {1, 2};
        SizingBatch batch = SizingBatch.of(Methods.ASHRAE, JOB).varying(SizingInput.CONTENTS, column);
        double before = volumes(batch)[0];
        column[0] = 100;
        assertThat(volumes(batch)[0]).isEqualTo(before);
        assertThat(batch.varying(SizingInput.CONTENTS, new double[] {1, 2, 3}).rows())
                .isEqualTo(3);
    }

    @Test
    void columnsOfOtherLengthAreRefused() {
        assertThatThrownBy(() -> batch().varying(SizingInput.HOT_TEMPERATURE, new double[] {350}))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("numbers in the column of the hot temperature 1")
                .hasMessageContaining("as many as in the other columns, 3");
        assertThatThrownBy(() -> SizingBatch.of(Methods.ASHRAE, JOB).varying(SizingInput.CONTENTS, new double[0]))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("one or more");
        assertThatThrownBy(() -> batch().requiredVolumes(new double[2]))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("places for volumes 2");
    }

    @Test
    void rowsThatAreNotThereAreRefused() {
        for (int index : new int[] {-1, 3}) {
            assertThatThrownBy(() -> batch().job(index))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("0 to 2");
        }
    }

    @Test
    void survivesBeingWrittenAndRead() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(batch());
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(volumes((SizingBatch) in.readObject())).containsExactly(volumes(batch()));
        }
    }
}
