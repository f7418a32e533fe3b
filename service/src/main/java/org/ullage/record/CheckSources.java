package org.ullage.record;

import org.ullage.provenance.Source;

/** Where the items of the checklist come from. */
final class CheckSources {

    static final Source USUAL_CARE = Source.commonPractice("usual care on pressurised loops");

    static final Source WORK_SPECIFICATION = Source.published(
            "Standard Work Specifications (NREL)", "7.8104.8, check of the charge: isolate, drain, read, match");

    static final Source TRADE_BODY =
            Source.published("note of a Belgian trade body", "how to check a closed expansion vessel");

    static final Source BOILER_INSTRUCTIONS =
            Source.published("boiler service instructions", "charge, fill pressure and minimum mark");

    static final Source RELIEF_INSTRUCTIONS =
            Source.published("boiler instructions", "relief valve and its regular test");

    static final Source JUDGEMENT = Source.commonPractice("judgement of the trade, without a document");

    static final Source INSPECTION =
            Source.published("pages for building inspectors", "tap test and weight of a vessel");

    static final Source WATER_LOOK = Source.secondHand(
            "VDI 2035 Part 1", "2021-03, look of the water, pH, log of the loop", "trade article on the guideline");

    static final Source UNIFORM_CODE =
            Source.published("Uniform Mechanical Code", "2024, 1004.1, support of the vessel");

    static final Source STATE_RULE =
            Source.published("Kan. Admin. Regs.", "49-52-13, a tank can be drained without emptying the system");

    private CheckSources() {}
}
