package org.ullage.fluids;

import org.ullage.provenance.Source;

/** The documents behind the glycol numbers, each with how it was read. The resource files say the same of their rows. */
final class GlycolSources {

    static final Source ASHRAE_DENSITY = Source.secondHand(
            "ASHRAE Handbook - Fundamentals",
            "2001, secondary coolants: density of inhibited glycol solutions by volume, to 125 degC",
            "data files of two open-source programs, not compared with a printed handbook");

    static final Source ASHRAE_FREEZING = Source.secondHand(
            "ASHRAE Handbook - Fundamentals",
            "2001, secondary coolants: freezing points of inhibited glycol solutions",
            "data files of an open-source fluid library");

    static final Source ASHRAE_PAIRING = Source.secondHand(
            "ASHRAE Handbook - Fundamentals",
            "2001, secondary coolants: percent by volume beside percent by mass",
            "data files of an open-source fluid library");

    static final Source MELINDER = Source.secondHand(
            "A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, IIR, Paris",
            "2010, polynomials for pure glycol in water",
            "coefficients agreeing in three open-source programs; book not opened");

    static final Source WARMER_FREEZING = Source.computed(
            "ASHRAE Handbook - Fundamentals, 2001, and A. Melinder, IIR, 2010",
            "the warmer of both freezing points at each concentration");

    static final Source CONDE = Source.secondHand(
            "M. Conde, Thermophysical properties of brines, M. Conde Engineering, Zurich",
            "2011, density of aqueous glycols",
            "excerpts of two public programs");

    static final Source IDEAL_MIXING = Source.computed(
            "IAPWS-IF97 water and DIPPR-105 glycol (Perry's Chemical Engineers' Handbook)",
            "volumes of the unmixed components added, no excess volume");

    static final Source IDEAL_DEFINITION = Source.computed(
            "IAPWS-IF97 water at 101.325 kPa and DIPPR-105 glycol (Perry's Chemical Engineers' Handbook), both at 20 degC",
            "percent of the volumes before mixing");

    static final Source ON_SOLUTION_DEFINITION = Source.computed(
            "DIPPR-105 glycol and Melinder 2010 solution, both at 20 degC",
            "volume of the glycol before mixing over volume of the solution after it");

    static final Source RAOULT = Source.computed(
            "Raoult's law with IAPWS-IF97 water and DIPPR-101 glycol (Perry's Chemical Engineers' Handbook)",
            "p = x p_water + (1 - x) p_glycol, x the mole fraction of water; an estimate, about 5 % for ethylene glycol, not"
                    + " verified for propylene glycol");

    static final Source PURE_WATER_VAPOUR = Source.computed(
            "IAPWS R7-97(2012), region 4",
            "pure water's vapour pressure, above that of any mixture with glycol and so on the safe side; below 0 degC its"
                    + " value at 0 degC");

    static final Source DEGRADATION = Source.published(
            "article of a maker of heat-transfer fluids on solar heating",
            "degradation of propylene and ethylene glycol rises from 250 degF bulk temperature; the product's own data sheet"
                    + " overrides it");

    static final Source SERVICE_SPAN = Source.published(
            "Process Cooling magazine, article 88966",
            "span of application of glycol solutions, -60 to 225 degF; the product's own data sheet overrides it");

    static final Source SOLAR_GRADE = Source.fromMemory(
            "producers' data sheets and IEA Solar Heating and Cooling literature",
            "limit of solar-grade inhibited propylene glycol; the product's own data sheet overrides it");

    static final Source DIPPR_ACCURACY = Source.secondHand(
            "Perry's Chemical Engineers' Handbook", "DIPPR-105 constants", "an open-source collection");

    static final Source CORRECTION =
            Source.computed("the four neighbours in the column", "cubic through 20, 25, 35 and 40 degC");

    static final Source KELVIN =
            Source.published("BIPM, The International System of Units (SI Brochure)", "9th ed., 2019");

    static final Source MOLAR_MASS = Source.fromMemory("IUPAC, standard atomic weights", "molar masses");

    static final Source DEFAULT_MODEL = Source.computed(
            "ASHRAE Handbook table and Melinder 2010 polynomials",
            "where the expansion by the second overtakes the first, over seven spans between 4 and 93 degC");

    static final Source USUAL_PRESSURE = Source.commonPractice("a closed loop runs at about 3 bar absolute");

    static final Source IDEAL_RANGE = Source.computed(
            "the tables and polynomials at hand",
            "none has a density of the mixture above this, to hold ideal mixing against");

    static final Source DENSITY_MAXIMUM = Source.computed(
            "G. S. Kell, J. Chem. Eng. Data 20 (1975) 97-105",
            "density maximum of water at 4 degC, and as much again above it for safety");

    static final Source ROW_CHECK = Source.computed(
            "G. S. Kell, J. Chem. Eng. Data 20 (1975) 97-105",
            "water tables with steps of 10, 20 and 25 K from 0 to 100 degC need 0.9e-6, 0.3e-6 and 0.2e-6 kg/m3 per K^4; twice"
                    + " the largest");

    private GlycolSources() {}
}
