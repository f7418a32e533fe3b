package org.ullage.fuzz;

import java.util.List;
import java.util.function.Function;
import org.ullage.fluids.Fluids;
import org.ullage.loop.EmitterType;
import org.ullage.loop.PipeStandard;
import org.ullage.loop.VolumeRange;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Moment;
import org.ullage.quantity.Power;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.SecondMoment;
import org.ullage.quantity.SectionModulus;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.record.RecordDate;

/** Texts of quantities, fluids, pipes, methods and days; what was read is printed and read again. */
final class TextTarget implements Target {

    private static final List<Parser> QUANTITIES = List.of(
            new Parser(Volume::parse, List.of("m3", "L", "gal", "ft3")),
            new Parser(Temperature::parse, List.of("K", "degC", "degF", "degR")),
            new Parser(GaugePressure::parse, List.of("Pa", "kPa", "bar", "psi", "barg", "mbar gauge")),
            new Parser(AbsolutePressure::parse, List.of("Pa abs", "bara", "psi abs", "kPa absolute")),
            new Parser(PressureDifference::parse, List.of("Pa", "bar", "psi", "MPa")),
            new Parser(TemperatureDifference::parse, List.of("K", "degF")),
            new Parser(Length::parse, List.of("m", "mm", "ft", "in")),
            new Parser(Area::parse, List.of("m2", "mm2", "ft2", "in2")),
            new Parser(Mass::parse, List.of("kg", "g", "lb")),
            new Parser(Density::parse, List.of("kg/m3", "lb/ft3")),
            new Parser(SpecificVolume::parse, List.of("m3/kg", "L/kg")),
            new Parser(Power::parse, List.of("W", "kW", "Btu/h")),
            new Parser(Force::parse, List.of("N", "kN", "lbf")),
            new Parser(Moment::parse, List.of("N m")),
            new Parser(Stress::parse, List.of("Pa", "MPa", "psi", "ksi")),
            new Parser(SectionModulus::parse, List.of("m3", "cm3", "in3")),
            new Parser(SecondMoment::parse, List.of("m4", "cm4", "in4")),
            new Parser(MassFraction::parse, List.of("mass%")),
            new Parser(VolumeFraction::parse, List.of("vol%")),
            new Parser(LinearExpansion::parse, List.of("1/K")));

    private record Parser(Function<String, Quantity<?, ?>> parse, List<String> units) {}

    @Override
    public String name() {
        return "texts";
    }

    @Override
    public double share() {
        return 0.42;
    }

    @Override
    public Object ask(Draw draw) {
        if (draw.chance(0.03)) {
            return words(draw);
        }
        Parser parser = draw.of(QUANTITIES);
        Quantity<?, ?> read = parser.parse.apply(text(parser, draw));
        Finite.check("quantity", read.si());
        Quantity<?, ?> again = parser.parse.apply(read.toString());
        if (!read.equals(again)) {
            throw new Fault(read + " reads back as " + again);
        }
        Finite.check(read.text(draw.of(UnitSystem.values())));
        return null;
    }

    private static String text(Parser parser, Draw draw) {
        double kind = draw.between(0, 1);
        if (kind < 0.6) {
            return Texts.number(draw) + draw.of("", " ", "\u00a0") + draw.of(parser.units);
        }
        if (kind < 0.8) {
            return Texts.spoilt(Texts.number(draw) + " " + draw.of(parser.units), draw);
        }
        return kind < 0.95 ? Texts.quantity(draw) : Texts.any(draw);
    }

    private static Object words(Draw draw) {
        String range = Texts.number(draw) + " L to " + Texts.number(draw) + " gal";
        String day = (1000 + draw.below(9000)) + "-0" + draw.below(10) + "-" + draw.below(40);
        String glycol = draw.of("propylene", "ethylene") + " glycol " + Texts.number(draw) + draw.of(" vol%", " mass%")
                + draw.of("", "/melinder", "/ashrae", "/conde");
        return switch (draw.below(6)) {
            case 0 -> {
                var fluid = Fluids.parse(maybeSpoilt(draw.chance(0.7) ? glycol : draw.of(Fluids.known()), draw));
                yield List.of(fluid.name(), fluid.lowest(), fluid.highest());
            }
            case 1 -> VolumeRange.parse(maybeSpoilt(range, draw));
            case 2 -> RecordDate.parse(maybeSpoilt(day, draw)).toString();
            case 3 ->
                Methods.named(maybeSpoilt(draw.of(Methods.all()).name(), draw)).name();
            case 4 ->
                EmitterType.named(maybeSpoilt(draw.of(EmitterType.values()).toString(), draw))
                        .toString();
            default -> {
                PipeStandard standard = PipeStandard.named(
                        maybeSpoilt(draw.of(PipeStandard.values()).title(), draw));
                yield standard.size(maybeSpoilt(draw.of(standard.sizes()).size(), draw));
            }
        };
    }

    private static String maybeSpoilt(String text, Draw draw) {
        return draw.chance(0.3) ? Texts.spoilt(text, draw) : text;
    }
}
