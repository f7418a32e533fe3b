package org.ullage.condition;

import static org.ullage.condition.LoopTrait.ALUMINIUM;
import static org.ullage.condition.LoopTrait.GLYCOL;
import static org.ullage.condition.LoopTrait.LOW_SALT;
import static org.ullage.condition.LoopTrait.SALINE;
import static org.ullage.condition.LoopTrait.SOLAR;
import static org.ullage.condition.SampleQuantity.CONDUCTIVITY;
import static org.ullage.condition.SampleQuantity.OXYGEN;
import static org.ullage.condition.SampleQuantity.PH;
import static org.ullage.condition.SampleQuantity.RESERVE_ALKALINITY;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/** The limits in print, as they stand side by side. They contradict each other; none is left out for that. */
public final class PublishedLimits {

    private static final Source VDI_2035_2021 = Source.secondHand(
            "VDI 2035 Part 1, prevention of damage in water heating installations",
            "2021-03",
            "summary by a water-treatment firm");

    private static final Source VDI_2035_2021_REMEMBERED =
            Source.fromMemory("VDI 2035 Part 1", "2021-03, pH with aluminium alloys");

    private static final Source VDI_2035_2009 = Source.secondHand(
            "VDI 2035 Part 2",
            "2009 edition, guide values for heating water",
            "boiler installation manual that reprints them");

    private static final Source SWKI_97_1 = Source.secondHand("SWKI 97-1", "closed heating", "page of a laboratory");

    private static final Source MO_405 = Source.published(
            "US Navy, MO-405, Solar heating systems: operation and maintenance", "table on fluid checks");

    private static final Source MO_405_6_1_5 = Source.published(
            "US Navy, MO-405, Solar heating systems: operation and maintenance",
            "section 6.1.5, another page of the same document");

    private static final Source MAGAZINE =
            Source.published("Home Power magazine, article on glycol life and pH", "online");

    private static final Source TRADE_PAGE = Source.published("trade page of questions on glycol loops", "excerpt");

    private static final Source FLUID_NOTE = Source.secondHand(
            "producers' literature on inhibited glycols",
            "concentration",
            "technical note of a fluid distributor, 2019-07-18");

    private static final Source TITRATION_PAGE =
            Source.published("page of a fluid supplier on reserve alkalinity (method of ASTM D1121)", "adequate range");

    private static final Source BOILER_CAP =
            Source.published("boiler instructions on glycol", "cap on the concentration");

    private static final Set<LoopTrait> ANY = Set.of();

    private static final List<SampleLimit> ALL = List.of(
            limit(PH, 8.2, 10.0, ANY, Set.of(GLYCOL, ALUMINIUM), Verdict.TREAT, "heating water", VDI_2035_2021),
            limit(PH, 8.3, 9.5, ANY, Set.of(GLYCOL, ALUMINIUM), Verdict.WATCH, "laboratory practice", SWKI_97_1),
            limit(
                    PH,
                    8.2,
                    9.0,
                    Set.of(ALUMINIUM),
                    Set.of(GLYCOL),
                    Verdict.TREAT,
                    "heating water with aluminium alloys, 2021 edition",
                    VDI_2035_2021_REMEMBERED),
            limit(
                    PH,
                    6.5,
                    8.5,
                    Set.of(ALUMINIUM),
                    Set.of(GLYCOL),
                    Verdict.TREAT,
                    "heating water with aluminium alloys, 2009 edition",
                    VDI_2035_2009),
            strict(limit(
                    CONDUCTIVITY,
                    null,
                    100.0,
                    Set.of(LOW_SALT),
                    Set.of(GLYCOL),
                    Verdict.TREAT,
                    "low-salt operation",
                    VDI_2035_2021)),
            limit(
                    CONDUCTIVITY,
                    100.0,
                    1500.0,
                    Set.of(SALINE),
                    Set.of(GLYCOL),
                    Verdict.TREAT,
                    "saline operation",
                    VDI_2035_2021),
            limit(CONDUCTIVITY, null, 500.0, ANY, Set.of(GLYCOL), Verdict.WATCH, "alarm value", SWKI_97_1),
            strict(limit(
                    OXYGEN,
                    null,
                    0.1,
                    Set.of(LOW_SALT),
                    Set.of(GLYCOL),
                    Verdict.TREAT,
                    "low-salt operation",
                    VDI_2035_2021)),
            strict(limit(
                    OXYGEN,
                    null,
                    0.02,
                    Set.of(SALINE),
                    Set.of(GLYCOL),
                    Verdict.TREAT,
                    "saline operation",
                    VDI_2035_2009)),
            limit(PH, 6.0, null, Set.of(GLYCOL), ANY, Verdict.REPLACE, "reinhibit or replace below", MO_405),
            limit(PH, 7.0, null, Set.of(GLYCOL), ANY, Verdict.REPLACE, "reinhibit or replace below", MO_405_6_1_5),
            limit(PH, 7.0, null, Set.of(GLYCOL), ANY, Verdict.REPLACE, "degraded: drain and replace below", MAGAZINE),
            limit(PH, 6.5, null, Set.of(GLYCOL), ANY, Verdict.REPLACE, "act below", TRADE_PAGE),
            strict(limit(
                    PH, 8.0, null, Set.of(GLYCOL), ANY, Verdict.WATCH, "corrosion is likelier at or below", MAGAZINE)),
            limit(
                    RESERVE_ALKALINITY,
                    8.0,
                    null,
                    Set.of(GLYCOL),
                    ANY,
                    Verdict.REPLACE,
                    "reinhibit or replace below",
                    MO_405),
            limit(
                    RESERVE_ALKALINITY,
                    10.0,
                    null,
                    Set.of(GLYCOL),
                    ANY,
                    Verdict.WATCH,
                    "adequate from 10 to 12 in most installations; 20 to 25 where it is very hot or hard to watch",
                    TITRATION_PAGE),
            limit(
                    SampleQuantity.GLYCOL,
                    20.0,
                    null,
                    Set.of(GLYCOL),
                    ANY,
                    Verdict.REPLACE,
                    "below it microbes grow; a very weak mixture feeds them",
                    FLUID_NOTE),
            limit(
                    SampleQuantity.GLYCOL,
                    25.0,
                    60.0,
                    Set.of(GLYCOL),
                    ANY,
                    Verdict.TREAT,
                    "the inhibitor works best between",
                    FLUID_NOTE),
            limit(
                    SampleQuantity.GLYCOL,
                    null,
                    50.0,
                    Set.of(GLYCOL),
                    Set.of(SOLAR),
                    Verdict.WATCH,
                    "cap for boilers; some stop at 35 vol%",
                    BOILER_CAP));

    private PublishedLimits() {}

    /**
     * All of them.
     *
     * @return in the order of the quantities
     */
    public static List<SampleLimit> all() {
        return ALL;
    }

    private static SampleLimit limit(
            SampleQuantity quantity,
            @Nullable Double least,
            @Nullable Double most,
            Set<LoopTrait> needs,
            Set<LoopTrait> excludes,
            Verdict outside,
            String meaning,
            Source source) {
        return new SampleLimit(quantity, least, most, needs, excludes, false, outside, meaning, source);
    }

    /** A limit printed as "below" or "above". */
    private static SampleLimit strict(SampleLimit limit) {
        return new SampleLimit(
                limit.quantity(),
                limit.least(),
                limit.most(),
                limit.needs(),
                limit.excludes(),
                true,
                limit.outside(),
                limit.meaning(),
                limit.source());
    }
}
