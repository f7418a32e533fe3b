package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

class WaterTest {

    private static final List<LoopFluid> MODELS = List.of(Water.IAPWS_IF97, Water.KELL_1975, Water.SATURATED_TABLE);

    @Test
    void modelsNameThemselves() {
        assertThat(MODELS)
                .extracting(LoopFluid::model)
                .containsExactly("IAPWS-IF97", "Kell 1975", "saturated-liquid table");
        assertThat(MODELS)
                .allMatch(LoopFluid::isWater)
                .extracting(LoopFluid::name)
                .containsOnly("water");
        assertThat(Water.IAPWS_IF97).hasToString("water (IAPWS-IF97)");
    }

    @Test
    void modelsNameTheirSources() {
        assertThat(MODELS)
                .extracting(model -> model.source().provenance())
                .containsExactly(Provenance.PUBLISHED, Provenance.PUBLISHED, Provenance.COMPUTED);
        assertThat(MODELS).extracting(LoopFluid::vapourPressureSource).containsOnly(Iapws97.SOURCE);
    }

    @Test
    void modelsNameTheirRanges() {
        assertThat(MODELS)
                .extracting(LoopFluid::lowest)
                .containsExactly(Temperature.celsius(0), Temperature.celsius(0), Temperature.fahrenheit(40));
        assertThat(MODELS)
                .extracting(LoopFluid::highest)
                .containsExactly(Temperature.celsius(350), Temperature.celsius(150), Temperature.fahrenheit(300));
    }

    @Test
    void modelsStayTheConstantsWhenWrittenAndReadBack() throws IOException, ClassNotFoundException {
        for (LoopFluid model : MODELS) {
            assertThat(readBack(model)).isSameAs(model);
        }
    }

    private static Object readBack(LoopFluid model) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(model);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return in.readObject();
        }
    }

    @Test
    void rangesIncludeTheirEnds() {
        for (LoopFluid model : MODELS) {
            for (Temperature end : List.of(model.lowest(), model.highest())) {
                assertThat(model.specificVolume(end, model.vapourPressure(end)).si())
                        .isBetween(0.00099, 0.0018);
            }
        }
    }

    @Test
    void if97RefusesSteam() {
        assertThatThrownBy(() -> Water.IAPWS_IF97.specificVolume(Temperature.celsius(120), AbsolutePressure.bar(1.5)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water pressure 1.5 bar abs at 120 degC is not allowed: it must be at least 1.987 bar abs, the"
                                + " pressure at which water of that temperature boils; it would be steam: raise the pressure or"
                                + " lower the temperature");
    }

    @Test
    void if97AcceptsThePressureItsRefusalNames() {
        assertThat(Water.IAPWS_IF97
                        .specificVolume(Temperature.celsius(120), AbsolutePressure.bar(1.987))
                        .si())
                .isBetween(0.00106, 0.00107);
    }

    @Test
    void if97RefusesIce() {
        assertThatThrownBy(() -> Water.IAPWS_IF97.specificVolume(Temperature.celsius(-5), AbsolutePressure.bar(3)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water temperature -5 degC is not allowed: it must be 0 degC to 350 degC for this model; water"
                                + " freezes there: give a higher temperature or use a glycol mixture");
    }

    @Test
    void if97RefusesTemperatureAboveRegion1() {
        assertThatThrownBy(() -> Water.IAPWS_IF97.vapourPressure(Temperature.celsius(351)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water temperature 351 degC is not allowed: it must be 0 degC to 350 degC for this model; give a"
                                + " temperature inside the range");
    }

    @Test
    void if97RefusesPressureAboveRegion1() {
        assertThatThrownBy(() -> Water.IAPWS_IF97.specificVolumeSi(300, 1.001e8))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water pressure 1001 bar abs is not allowed: it must be above 0 and at most 1000 bar abs; give"
                                + " the absolute pressure at the point whose temperature is meant");
    }

    @Test
    void kellRefusesAbove150DegreesAndPointsToTheWiderModel() {
        assertThatThrownBy(() -> Water.KELL_1975.specificVolume(Temperature.celsius(160), AbsolutePressure.bar(10)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water temperature 160 degC is not allowed: it must be 0 degC to 150 degC for this model; give a"
                                + " temperature inside the range or use the model IAPWS-IF97, which covers it");
    }

    @ParameterizedTest
    @CsvSource({"39, 39 degF", "301, 301 degF"})
    void tableRefusesOutsideItsRowsInItsOwnUnit(double fahrenheit, String value) {
        assertThatThrownBy(() -> Water.SATURATED_TABLE.vapourPressure(Temperature.fahrenheit(fahrenheit)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water temperature " + value + " is not allowed: it must be 40 degF to 300 degF for this model;"
                                + " give a temperature inside the range or use the model IAPWS-IF97, which covers it");
    }

    @Test
    void aValueJustOutsideALimitIsNotPrintedAsTheLimit() {
        assertThatThrownBy(() -> Water.KELL_1975.vapourPressure(Temperature.celsius(150.0000001)))
                .hasMessageStartingWith(
                        "water temperature 150.0000001 degC is not allowed: it must be 0 degC to 150 degC");
    }

    @Test
    void saysPlainlyThatNotANumberIsNoTemperature() {
        assertThatThrownBy(() -> Water.IAPWS_IF97.specificVolumeSi(Double.NaN, 3e5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("water temperature NaN K is not allowed");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -3e5, 0})
    void if97RefusesWhatIsNoPressure(double pascals) {
        assertThatThrownBy(() -> Water.IAPWS_IF97.specificVolumeSi(300, pascals))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("water pressure " + pascals + " Pa abs is not allowed");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, 101_325, 1e12})
    void kellAndTableIgnoreThePressure(double pascals) {
        assertThat(Water.KELL_1975.specificVolumeSi(350, pascals))
                .isEqualTo(Water.KELL_1975.specificVolumeSi(350, 3e5));
        assertThat(Water.SATURATED_TABLE.specificVolumeSi(350, pascals))
                .isEqualTo(Water.SATURATED_TABLE.specificVolumeSi(350, 3e5));
    }

    /** Liquid water begins at 0 degC and the formulation's region 1 ends at 350: both belong to it. */
    @Test
    void widerModelIsRecommendedUpToBothItsEnds() {
        assertThatThrownBy(() -> Water.SATURATED_TABLE.vapourPressure(Temperature.celsius(0)))
                .hasMessageEndingWith("use the model IAPWS-IF97, which covers it");
        assertThatThrownBy(() -> Water.KELL_1975.vapourPressure(Temperature.celsius(350)))
                .hasMessageEndingWith("use the model IAPWS-IF97, which covers it");
    }

    @Test
    void absoluteZeroIsNoTemperatureOfWater() {
        assertThatThrownBy(() -> Water.IAPWS_IF97.specificVolumeSi(0, 3e5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("water temperature 0.0 K is not allowed");
    }

    @Test
    void whetherItIsLiquidIsNotAnsweredOutsideTheModelEither() {
        assertThatThrownBy(() ->
                        Water.KELL_1975.isLiquidSi(Temperature.celsius(160).si(), 1e6))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("160 degC");
    }
}
