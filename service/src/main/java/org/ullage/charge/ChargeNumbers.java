package org.ullage.charge;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.operation.FillPlan;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;

/** The calculation of a charge plan, done once; {@link ChargePlan} shows it and {@link ChargeWorkings} puts it into steps. */
final class ChargeNumbers implements Serializable {

    private static final long serialVersionUID = 1L;

    final ChargeJob job;
    final ChargeReading wanted;
    final ChargeReading toSet;

    /** The charge, absolute, as warm as the gas is at the filling and with the loop hot. */
    final AbsolutePressure fillCharge;

    final AbsolutePressure hotCharge;
    final FillPlan window;

    /** Water the vessel holds at the cold pressure of the sizing. */
    final Volume coldWater;

    /** Water it must hold after filling, so that reserve and cold pressure are there when the loop is coldest. */
    final Volume toHold;

    final AbsolutePressure fill;
    final Volume water;
    final AbsolutePressure hot;
    final @Nullable FoundCharge found;

    ChargeNumbers(ChargeJob job) {
        this.job = job;
        Sizing sizing = job.sizing();
        Volume nominal = job.nominal();
        GasTemperatures gas = sizing.method().gasTemperatures();
        AbsolutePressure site = sizing.atmosphere();
        this.wanted = new ChargeReading(sizing.preCharge(), gas.charged(), site);
        this.toSet = wanted.at(job.air()).under(job.chargingAir());
        this.fillCharge = toSet.absolute();
        this.hotCharge = chargeAt(gas.hot());
        this.window = FillPlan.of(sizing, nominal, job.water(), job.air());
        this.coldWater = GasLaw.waterInVessel(
                nominal, chargeAt(gas.cold()), sizing.coldPressure().absolute(site));
        this.toHold = Volume.ofSi(Math.max(sizing.reserveVolume().si(), coldWater.si()))
                .plus(window.contraction());
        GaugePressure chosen = job.fill();
        this.fill = chosen == null ? GasLaw.pressureHolding(nominal, fillCharge, toHold) : chosen.absolute(site);
        this.water = GasLaw.waterInVessel(nominal, fillCharge, fill);
        this.hot = GasLaw.pressureHolding(nominal, hotCharge, water.plus(window.expansion()));
        ChargeReading reading = job.found();
        this.found = reading == null
                ? null
                : FoundCharge.of(reading, wanted, VesselAcceptance.of(sizing, nominal), job.tolerance());
    }

    private AbsolutePressure chargeAt(Temperature gas) {
        return wanted.at(gas).absolute();
    }
}
