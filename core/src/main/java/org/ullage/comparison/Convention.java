package org.ullage.comparison;

import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.provenance.Constant;
import org.ullage.quantity.Units;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;

/** The conventions in which methods differ, in the order in which a vessel is worked out. */
public enum Convention {
    /** Which temperature is meant by hot. */
    HOT_TEMPERATURE("temperature meant by hot") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.hotBasis().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.hotBasis());
        }
    },
    /** Which expansion is counted. */
    EXPANSION("expansion") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.expansion().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.expansion());
        }
    },
    /** How the growth of the pipe is counted. */
    PIPE_CREDIT("pipe credit") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.pipeCredit().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.pipeCredit());
        }
    },
    /** How much water is kept in reserve. */
    RESERVE("reserve") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.reserve().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.reserve());
        }
    },
    /** What is counted as turned to vapour in a solar loop. */
    VAPOUR("vapour in stagnation") {
        @Override
        public String words(Method method, VesselKind kind) {
            Constant least = method.leastVolumePerWater();
            return method.vapour() + (least == null ? "" : ", at least " + least.value() + " x the water taken in");
        }

        @Override
        Method taken(Method to, Method from) {
            return to.withVapourOf(from);
        }
    },
    /** How the cold pressure follows from the static head. */
    COLD_PRESSURE("cold pressure") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.coldPressure().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.coldPressure());
        }
    },
    /** How the final pressure follows from the relief setting. */
    FINAL_PRESSURE("final pressure") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.finalPressure().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.finalPressure());
        }
    },
    /** What the gas is charged to. */
    CHARGE("gas charge") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.charge(kind).toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.withChargeOf(from);
        }
    },
    /** What temperatures the gas has. */
    GAS_TEMPERATURES("gas temperatures") {
        @Override
        public String words(Method method, VesselKind kind) {
            GasTemperatures gas = method.gasTemperatures();
            return gas.isIsothermal() || kind == VesselKind.OPEN
                    ? "the same throughout"
                    : "charged at " + gas.charged().text(Units.CELSIUS) + ", cold "
                            + gas.cold().text(Units.CELSIUS) + ", hot "
                            + gas.hot().text(Units.CELSIUS);
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.gasTemperatures());
        }
    },
    /** How much larger than the net expansion an open tank is. */
    OPEN_ALLOWANCE("allowance for open tanks") {
        @Override
        public String words(Method method, VesselKind kind) {
            Constant allowance = method.openAllowance();
            return kind != VesselKind.OPEN || allowance == null ? "none" : allowance.value() + " x the net expansion";
        }

        @Override
        Method taken(Method to, Method from) {
            return to.withOpenAllowanceOf(from);
        }
    },
    /** Which air pressure counts when the site's is not given. */
    AIR_PRESSURE("air pressure") {
        @Override
        public String words(Method method, VesselKind kind) {
            return method.atmosphere().toString();
        }

        @Override
        Method taken(Method to, Method from) {
            return to.with(from.atmosphere());
        }
    };

    private final String title;

    Convention(String title) {
        this.title = title;
    }

    /**
     * What a method says here.
     *
     * @param method the method
     * @param kind the kind of vessel it is asked for
     * @return in words
     */
    public abstract String words(Method method, VesselKind kind);

    /**
     * What the method of an answer says here.
     *
     * @param sizing the answer
     * @return in words
     */
    public String words(Sizing sizing) {
        return words(sizing.method(), sizing.job().vessel().kind());
    }

    /** The first method with this convention taken from the second. */
    abstract Method taken(Method to, Method from);

    /**
     * The convention's name for people.
     *
     * @return such as {@code pipe credit}
     */
    @Override
    public String toString() {
        return title;
    }
}
