package org.ullage.examples.support;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.file.Quoted;
import org.ullage.examples.file.SheetLine;
import org.ullage.loop.PipeSize;
import org.ullage.loop.PipeStandard;
import org.ullage.quantity.Density;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.support.AllowableStress;
import org.ullage.support.AnchorStrength;
import org.ullage.support.Asce705To716;
import org.ullage.support.Bracket;
import org.ullage.support.ContainedFluid;
import org.ullage.support.HandPosition;
import org.ullage.support.LiftLimit;
import org.ullage.support.PipeStub;
import org.ullage.support.SeismicForce;
import org.ullage.support.ShellEstimate;
import org.ullage.support.ShellMass;
import org.ullage.support.SideForce;
import org.ullage.support.StubSection;
import org.ullage.support.VesselRemoval;
import org.ullage.support.VesselWeight;

/** One line of the list: a vessel and what holds it. What the line does not give is not checked. */
final class SupportLine {

    private final SheetLine sheet;

    SupportLine(SheetLine sheet) {
        this.sheet = sheet;
    }

    String id() {
        return sheet.cell(SupportColumns.ID);
    }

    /** The system the vessel's volume is written in. */
    UnitSystem system() {
        return sheet.cell(SupportColumns.NOMINAL).matches(".*(gal|gallons?|ft3)") ? UnitSystem.IP : UnitSystem.SI;
    }

    VesselWeight weight() {
        sheet.requireWhole();
        Volume nominal = sheet.required(SupportColumns.NOMINAL, Volume::parse);
        Density density = sheet.optional(SupportColumns.FLUID_DENSITY, Density::parse);
        ContainedFluid fluid = density == null ? ContainedFluid.WATER : ContainedFluid.of("the given fluid", density);
        return new VesselWeight(nominal, shell(nominal), fluid);
    }

    private ShellMass shell(Volume nominal) {
        Mass plate = sheet.optional(SupportColumns.EMPTY_MASS, Mass::parse);
        if (plate != null) {
            return ShellMass.fromPlate(plate);
        }
        GaugePressure rating = sheet.optional(SupportColumns.RATING, GaugePressure::parse);
        if (rating == null) {
            throw new MissingInputException(
                    SupportColumns.EMPTY_MASS + " or " + SupportColumns.RATING,
                    "the weight",
                    "give the mass on the vessel's plate, or its rating, from which the shell is estimated");
        }
        return new ShellEstimate(nominal, rating).shellMass();
    }

    /** The push of an earthquake on the full vessel. */
    Optional<SeismicForce> earthquake(VesselWeight weight) {
        Double motion = sheet.optional(SupportColumns.GROUND_MOTION, SupportLine::number);
        if (motion == null) {
            return Optional.empty();
        }
        double importance = sheet.required(SupportColumns.IMPORTANCE, SupportLine::number);
        double height = sheet.required(SupportColumns.HEIGHT_IN_BUILDING, SupportLine::number);
        return Optional.of(new SeismicForce(Asce705To716.vessel(height), weight.waterlogged(), motion, importance));
    }

    Optional<PipeStub> stub(VesselWeight weight) {
        PipeStandard standard = sheet.optional(SupportColumns.STUB_STANDARD, PipeStandard::named);
        if (standard == null) {
            return Optional.empty();
        }
        PipeSize size = sheet.required(SupportColumns.STUB_SIZE, standard::size);
        boolean threaded = "yes".equals(sheet.optional(SupportColumns.STUB_THREADED, SupportLine::yesOrNo));
        Length arm = sheet.required(SupportColumns.STUB_ARM, Length::parse);
        SideForce side =
                earthquake(weight).map(push -> new SideForce(push.force(), arm)).orElse(SideForce.NONE);
        return Optional.of(new PipeStub(
                threaded ? StubSection.threaded(size) : StubSection.plain(size),
                weight.waterlogged(),
                arm,
                side,
                AllowableStress.usualFor(standard.material())));
    }

    Optional<Bracket> bracket(VesselWeight weight) {
        Length arm = sheet.optional(SupportColumns.BRACKET_ARM, Length::parse);
        if (arm == null) {
            return Optional.empty();
        }
        return Optional.of(new Bracket(
                weight.waterlogged(),
                arm,
                sheet.required(SupportColumns.BRACKET_ROWS, Length::parse),
                sheet.required(SupportColumns.TOP_ANCHORS, SupportLine::count),
                sheet.required(SupportColumns.ALL_ANCHORS, SupportLine::count),
                earthquake(weight).map(SeismicForce::force).orElse(Force.newtons(0)),
                new AnchorStrength(
                        sheet.required(SupportColumns.ANCHOR_TENSION, Force::parse),
                        sheet.required(SupportColumns.ANCHOR_SHEAR, Force::parse))));
    }

    Optional<VesselRemoval> removal(VesselWeight weight) {
        Length reach = sheet.optional(SupportColumns.LIFT_REACH, Length::parse);
        if (reach == null) {
            return Optional.empty();
        }
        HandPosition from = HandPosition.ahead(reach, sheet.required(SupportColumns.LIFT_FROM, Length::parse));
        HandPosition to = HandPosition.ahead(reach, sheet.required(SupportColumns.LIFT_TO, Length::parse));
        return Optional.of(VesselRemoval.by(weight, LiftLimit.ofVessel(from, to)));
    }

    private static @Nullable String yesOrNo(String text) {
        if (text.equals("yes") || text.equals("no")) {
            return text;
        }
        throw new IllegalArgumentException(Quoted.of(text) + " is neither yes nor no");
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(Quoted.of(text) + " is not a plain number", e);
        }
    }

    private static int count(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(Quoted.of(text) + " is not a whole number", e);
        }
    }
}
