package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.OutOfRangeException;

/** Fluids by name. */
class FluidsTest {

    @Test
    void water() {
        assertThat(Fluids.parse("water")).isSameAs(Water.IAPWS_IF97);
        assertThat(Fluids.parse(" Water / IF97 ")).isSameAs(Water.IAPWS_IF97);
        assertThat(Fluids.parse("water/kell")).isSameAs(Water.KELL_1975);
        assertThat(Fluids.parse("WATER/table")).isSameAs(Water.SATURATED_TABLE);
        assertThat(Fluids.waterModels()).containsExactly(Water.IAPWS_IF97, Water.KELL_1975, Water.SATURATED_TABLE);
    }

    @ParameterizedTest
    @CsvSource({
        "propylene glycol 30 vol%, propylene glycol 30 vol%/melinder",
        "propylene glycol 20 vol%, propylene glycol 20 vol%/ashrae",
        "ethylene glycol 40 mass%, ethylene glycol 40 mass%/melinder",
        "Ethylene  Glycol 40mass% / ASHRAE, ethylene glycol 40 mass%/ashrae",
        "propyleneglycol 30 % vol/conde, propylene glycol 30 vol%/conde",
        "propylene glycol 30vol%/ideal, propylene glycol 30 vol%/ideal",
        "propylene glycol 33.5 vol %/melinder, propylene glycol 33.5 vol%/melinder",
        "ethylene glycol 30 wt%, ethylene glycol 30 mass%/melinder",
        "ethylene glycol 10 vol%/ashrae-as-printed, ethylene glycol 10 vol%/ashrae-as-printed"
    })
    void glycol(String text, String expected) {
        GlycolSolution fluid = (GlycolSolution) Fluids.parse(text);
        assertThat(fluid.text()).isEqualTo(expected);
        assertThat(Fluids.parse(fluid.text())).isEqualTo(fluid).hasSameHashCodeAs(fluid);
    }

    @Test
    void convertedConcentrationIsShown() {
        assertThat(Fluids.parse("ethylene glycol 40 mass%/ashrae").model())
                .isEqualTo("ASHRAE Handbook table at 37.5 vol% by ASHRAE's pairing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "brine", "glycol 30 vol%", "water 30 vol%", "propylene", "methanol 20 vol%/melinder"})
    void unknownFluidsListWhatIsKnown(String text) {
        assertThatThrownBy(() -> Fluids.parse(text))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "fluid \"" + text + "\" is not allowed: it must be one of: water; water/if97 or kell or table;"
                                + " propylene glycol <number> vol% or mass%; ethylene glycol <number> vol% or mass%; either"
                                + " glycol followed by / and ashrae or ashrae-as-printed or melinder or conde or ideal; write it"
                                + " in one of these ways");
    }

    @ParameterizedTest
    @CsvSource({
        "water/iapws, model of water",
        "propylene glycol 30 vol%/refprop, model of glycol",
        "propylene glycol thirty vol%, concentration",
        "propylene glycol vol%, concentration",
        "ethylene glycol 3 0 vol%, concentration"
    })
    void unknownPartsAreNamed(String text, String what) {
        assertThatThrownBy(() -> Fluids.parse(text)).hasMessageStartingWith(what + " \"" + text + "\" is not allowed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"propylene glycol 30%", "propylene glycol 30", "propylene glycol"})
    void barePercentIsRefused(String text) {
        assertThatThrownBy(() -> Fluids.parse(text))
                .hasMessageContaining("a number followed by vol% or mass%; say which percentage it is");
    }

    @Test
    void rangesAreStillRefused() {
        assertThatThrownBy(() -> Fluids.parse("propylene glycol 130 vol%")).hasMessageContaining("from 0 % to 100 %");
        assertThatThrownBy(() -> Fluids.parse("propylene glycol 70 vol%"))
                .hasMessageContaining("0 to 60.0 mass% for Melinder 2010");
    }

    @Test
    void glycolIsNoWaterAndSaysItsModel() {
        GlycolSolution fluid = (GlycolSolution) Fluids.parse("propylene glycol 30 vol%");
        assertThat(fluid.isWater()).isFalse();
        assertThat(fluid).hasToString("propylene glycol 30 vol% (Melinder 2010 at 30.6 mass% by ASHRAE's pairing)");
    }

    @Test
    void modelWithoutAFluidIsNoFluid() {
        assertThatThrownBy(() -> Fluids.parse("/kell")).hasMessageStartingWith("fluid \"/kell\" is not allowed");
    }
}
