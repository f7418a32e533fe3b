package org.ullage.condition;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Caution;

/**
 * What a sample says: one finding for each thing that was looked at, in the order it was given. Where limits disagree the strictest one
 * decides, unless the fluid's own data sheet has a limit: then that decides. Immutable.
 *
 * @param sample the sample
 * @param findings what it says
 */
public record FluidFindings(FluidSample sample, List<Finding> findings) implements Serializable {

    private static final Source FLUID_MAKERS = Source.secondHand(
            "makers' literature on solar heating fluids",
            "degradation rises above 250 degF",
            "trade article on solar heat");

    private static final Constant DEGRADES_AT = new Constant("t_age", 121, "degC", FLUID_MAKERS);

    private static final Temperature DEGRADES = Temperature.celsius(DEGRADES_AT.value());

    private static final Source SOLAR_GRADE = Source.fromMemory(
            "makers' literature and IEA-SHC reports", "bulk limit of solar-grade propylene glycol 160 to 170 degC");

    private static final Constant SOLAR_LIMIT_AT = new Constant("t_bulk", 160, "degC", SOLAR_GRADE);

    private static final Temperature SOLAR_LIMIT = Temperature.celsius(SOLAR_LIMIT_AT.value());

    private static final Source ARITHMETIC =
            Source.computed("comparison of two temperatures", "freezing point against need");

    private static final Caution THIN_METAL = new Caution(
            "Corrosion finds the thinnest metal of the loop first: often the shell of the vessel, a panel radiator, a plate or a bellows."
                    + " Note which it is, and look there before anything leaks.",
            Source.commonPractice("usual care with loop fluids"));

    private static final Caution HANDLING = new Caution(
            "Take the sample with the loop cool and the pressure known; wear gloves and eye protection. Glycol and inhibitors go into a"
                    + " marked container, never into a drain: local rules on waste hold.",
            Source.commonPractice("usual care with loop fluids"));

    /**
     * Copies the findings.
     *
     * @param sample the sample
     * @param findings what it says
     */
    public FluidFindings {
        findings = List.copyOf(findings);
    }

    /**
     * Looks at a sample.
     *
     * @param sample the sample
     * @return its findings
     */
    public static FluidFindings of(FluidSample sample) {
        List<Finding> findings = new ArrayList<>();
        sample.values().forEach(value -> findings.add(measured(sample, value)));
        if (sample.look() != null) {
            findings.add(sensed("look", sample.look().observation()));
        }
        if (sample.smell() != null) {
            findings.add(sensed("smell", sample.smell().observation()));
        }
        if (sample.freezing() != null && sample.lowest() != null) {
            findings.add(frost(sample.freezing(), sample.lowest()));
        }
        if (sample.hottest() != null && sample.traits().contains(LoopTrait.GLYCOL)) {
            findings.add(heated(sample.hottest()));
        }
        return new FluidFindings(sample, findings);
    }

    private static Finding measured(FluidSample sample, SampleValue value) {
        List<Judgement> own = judged(sample.dataSheet().stream(), sample, value);
        List<Judgement> published = judged(PublishedLimits.all().stream(), sample, value);
        List<Judgement> all = Stream.concat(own.stream(), published.stream()).toList();
        return strictest(own.isEmpty() ? published : own)
                .map(decides -> new Finding(
                        value.text(),
                        decides.verdict(),
                        decides.limit().range() + ", " + decides.limit().meaning(),
                        decides.limit().source(),
                        decides.limit(),
                        all))
                .orElseGet(() -> undecided(value));
    }

    private static List<Judgement> judged(Stream<SampleLimit> limits, FluidSample sample, SampleValue value) {
        return limits.filter(limit -> limit.quantity() == value.quantity() && limit.appliesTo(sample.traits()))
                .map(limit -> new Judgement(limit, limit.of(value.number())))
                .toList();
    }

    /** The worst verdict; the first of several that are alike. */
    private static Optional<Judgement> strictest(List<Judgement> judgements) {
        return judgements.stream().reduce((one, other) -> other.verdict().compareTo(one.verdict()) > 0 ? other : one);
    }

    private static Finding undecided(SampleValue value) {
        List<String> ways = PublishedLimits.all().stream()
                .filter(limit ->
                        limit.quantity() == value.quantity() && !limit.where().isEmpty())
                .map(limit -> limit.where() + " " + limit.range())
                .toList();
        String meaning = ways.isEmpty()
                ? "no limit is known here: give the data sheet's"
                : "say how the loop is run: " + String.join("; ", ways);
        return Finding.plain(value.text(), Verdict.UNDECIDED, meaning, Source.given());
    }

    private static Finding sensed(String sense, Observation sign) {
        return Finding.plain(sense + " " + sign.word(), sign.verdict(), sign.meaning(), sign.source());
    }

    private static Finding frost(Temperature freezing, Temperature lowest) {
        boolean safe = freezing.compareTo(lowest) <= 0;
        return Finding.plain(
                "freezing point " + freezing.textInBothSystems(),
                safe ? Verdict.KEEP : Verdict.TREAT,
                (safe ? "protects down to the " : "does not protect down to the ") + lowest.textInBothSystems()
                        + " the loop must stand",
                ARITHMETIC);
    }

    private static Finding heated(Temperature hottest) {
        String subject = "heated to " + hottest.textInBothSystems();
        if (hottest.compareTo(SOLAR_LIMIT) > 0) {
            return Finding.plain(
                    subject,
                    Verdict.TREAT,
                    "above the bulk limit even of solar-grade fluid, " + SOLAR_LIMIT.textInBothSystems()
                            + ": measure pH and reserve alkalinity now",
                    SOLAR_GRADE);
        }
        boolean warm = hottest.compareTo(DEGRADES) > 0;
        return Finding.plain(
                subject,
                warm ? Verdict.WATCH : Verdict.KEEP,
                (warm ? "above " : "not above ") + DEGRADES.textInBothSystems() + ", where glycol ages faster",
                FLUID_MAKERS);
    }

    /**
     * The worst of the findings.
     *
     * @return what the fluid as a whole calls for; {@link Verdict#UNDECIDED} if nothing was looked at
     */
    public Verdict verdict() {
        return findings.stream()
                .map(Finding::verdict)
                .max(Comparator.naturalOrder())
                .orElse(Verdict.UNDECIDED);
    }

    /**
     * What to mind with the sample and the metal.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
        return List.of(THIN_METAL, HANDLING);
    }

    /**
     * The findings for people.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        StringBuilder text = new StringBuilder("fluid: " + verdict().word() + "\n");
        findings.forEach(finding -> text.append(finding.text()));
        return text.toString();
    }
}
