package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** 1 bar wanted at 20 degC under 1 bar of air, in 100 L between 2 and 3.2 bar absolute. */
class FoundChargeTest {

    private static final AbsolutePressure AIR = AbsolutePressure.bar(1);
    private static final Temperature TWENTY = Temperature.celsius(20);
    private static final ChargeReading WANTED = new ChargeReading(GaugePressure.bar(1), TWENTY, AIR);
    private static final VesselAcceptance VESSEL =
            VesselAcceptance.of(Volume.litres(100), AbsolutePressure.bar(2), AbsolutePressure.bar(3.2));

    private static FoundCharge found(double bar, Temperature gas) {
        return FoundCharge.of(
                new ChargeReading(GaugePressure.bar(bar), gas, AIR), WANTED, VESSEL, GaugeTolerance.USUAL);
    }

    @Test
    void tooLowIsFilledUp() {
        FoundCharge low = found(0.6, TWENTY);
        assertThat(low.action()).isEqualTo(ChargeAction.ADD);
        assertThat(low.correction().in(Units.BAR)).isCloseTo(0.4, within(1e-12));
        assertThat(low.acceptance().in(Units.LITRE)).isCloseTo(-7.5, within(1e-9)); // 160 (1/2 - 1/3.2) - 37.5
        assertThat(low.text(UnitSystem.SI))
                .contains("add 0.4 bar; as found the vessel takes in 7.5 L less.")
                .contains("part full of water already");
    }

    @Test
    void fromTheWorksItIsTooHigh() {
        FoundCharge high = found(1.5, TWENTY);
        assertThat(high.action()).isEqualTo(ChargeAction.BLEED);
        assertThat(high.correction().in(Units.BAR)).isCloseTo(-0.5, within(1e-12));
        assertThat(high.acceptance().in(Units.LITRE)).isCloseTo(100 * (1 - 2.5 / 3.2) - 37.5, within(1e-9));
        assertThat(high.text(UnitSystem.SI)).contains("bleed 0.5 bar").contains("too little water, or none");
    }

    @Test
    void whatIsWantedIsComparedAtTheTemperatureOfTheReading() {
        Temperature frost = Temperature.kelvins(293.15 * 0.9);
        FoundCharge cold = found(0.8, frost); // 2 bar abs x 0.9
        assertThat(cold.wanted().pressure().in(Units.BAR)).isCloseTo(0.8, within(1e-12));
        assertThat(cold.action()).isEqualTo(ChargeAction.LEAVE);
        assertThat(cold.acceptance().si()).isCloseTo(0, within(1e-12));
        assertThat(found(0.8, TWENTY).action()).isEqualTo(ChargeAction.ADD);
    }

    @Test
    void theToleranceItselfIsStillLeft() {
        assertThat(found(0.9, TWENTY).action()).isEqualTo(ChargeAction.LEAVE);
        assertThat(found(0.9, TWENTY).text(UnitSystem.SI)).contains("leave it, it is within 0.1 bar");
        assertThat(found(0.89, TWENTY).action()).isEqualTo(ChargeAction.ADD);
    }

    @Test
    void aChargeThatIsGoneAsksForTheMembrane() {
        assertThat(found(0, TWENTY).consequence()).contains("the membrane is torn");
        assertThat(found(0.2, TWENTY).consequence()).doesNotContain("torn");
    }
}
