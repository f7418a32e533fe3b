package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.StagnationContents;
import org.ullage.pressure.StaticHead;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/** Collects what a reader must know about one answer. */
final class SizingWarnings {

    private static final Source ACCEPTANCE =
            Source.fromMemory("trade practice", "diaphragm vessels accept a part of their shell only");

    private static final Source HYDROSTATIC = Source.computed("hydrostatic law", "pressure at the top of the loop");

    private static final Source VAPOUR =
            Source.computed("volume balance", "vapour in the collectors pushes out the liquid they held");

    private static final Source MEMBRANE = Source.secondHand(
            "DIN 4807-3 and EN 13831", "70 degC at the membrane, not 0 degC or below", "a German trade encyclopaedia");

    private static final Temperature FROST = Temperature.celsius(new Constant("t_min", 0, "degC", MEMBRANE).value());

    private SizingWarnings() {}

    static List<Caution> of(SizingNumbers numbers) {
        List<Caution> warnings = new ArrayList<>();
        addAcceptanceUnknown(numbers, warnings);
        addPipe(numbers, warnings);
        warnings.addAll(numbers.method.expansion().warnings(numbers.job.loop().fluid(), numbers.states));
        if (numbers.job.vessel().kind() != VesselKind.OPEN) {
            addBoiling(numbers, warnings);
            addFrost(numbers, warnings);
            addVacuumAtTop(numbers, warnings);
            addFlashingAtTop(numbers, warnings);
            warnings.addAll(FixedPressures.warnings(numbers.method, numbers.job.pressures()));
        }
        numbers.method.remarks().stream()
                .filter(remark -> remark.when().holds(numbers.job))
                .map(MethodRemark::caution)
                .forEach(warnings::add);
        return List.copyOf(warnings);
    }

    private static void addAcceptanceUnknown(SizingNumbers numbers, List<Caution> warnings) {
        if (numbers.job.vessel().acceptanceLimit() == null) {
            warnings.add(new Caution(
                    "The acceptance limit of the diaphragm vessel was not given: check that the chosen vessel accepts the"
                            + " acceptance volume.",
                    ACCEPTANCE));
        }
    }

    private static void addPipe(SizingNumbers numbers, List<Caution> warnings) {
        PipeMaterial pipe = numbers.job.loop().pipe();
        PipeCredit credit = numbers.method.pipeCredit();
        if (pipe == null && (credit == PipeCredit.SUBTRACTED || credit == PipeCredit.BALANCED)) {
            warnings.add(new Caution(
                    "The pipe material was not given, so no pipe credit was taken: the safe side.", credit.source()));
        } else if (credit == PipeCredit.INCLUDED && pipe != null && !pipe.equals(PipeMaterial.STEEL)) {
            warnings.add(new Caution(
                    "The expansion rule is net of steel pipe and cannot be changed to " + pipe.name()
                            + ": for pipe that grows less the vessel may be too small.",
                    credit.source()));
        } else if (credit == PipeCredit.NONE && pipe != null && !pipe.equals(PipeMaterial.RIGID)) {
            warnings.add(
                    new Caution("This method takes no pipe credit; the pipe material was not used.", credit.source()));
        }
    }

    private static void addBoiling(SizingNumbers numbers, List<Caution> warnings) {
        StagnationContents boiling = numbers.job.loop().stagnation();
        if (boiling != null && !numbers.method.vapour().isForBoilingLoops()) {
            warnings.add(new Caution(
                    "This rule leaves out what vapour pushes out of the collectors and their pipe in stagnation, up to "
                            + boiling.collectors().plus(boiling.pipe()).text(UnitSystem.SI)
                            + ": if the loop may boil the vessel is far too small. Take a rule for solar loops.",
                    VAPOUR));
        }
    }

    private static void addFrost(SizingNumbers numbers, List<Caution> warnings) {
        Temperature cold = numbers.job.temperatures().cold();
        boolean membrane = numbers.job.vessel().kind() != VesselKind.PLAIN_STEEL;
        if (membrane && cold != null && cold.compareTo(FROST) <= 0) {
            warnings.add(new Caution(
                    "The membrane should not be at 0 degC or below: put a vessel before it that warms the fluid.",
                    MEMBRANE));
        }
    }

    private static void addVacuumAtTop(SizingNumbers numbers, List<Caution> warnings) {
        Length head = numbers.job.pressures().staticHead();
        GaugePressure stated = numbers.job.pressures().coldPressure();
        if (head != null && stated != null && stated.si() < StaticHead.of(head).si()) {
            warnings.add(new Caution(
                    "The cold pressure " + stated.text(UnitSystem.SI) + " does not reach the top of the loop, "
                            + head.text(UnitSystem.SI) + " above: there the loop would be under vacuum and draw air.",
                    HYDROSTATIC));
        }
    }

    /** The hottest water may pass the top while the loop as a whole is still near its cold pressure. */
    private static void addFlashingAtTop(SizingNumbers numbers, List<Caution> warnings) {
        Length head = numbers.job.pressures().staticHead();
        if (head == null
                || !numbers.states.hotGiven()
                || numbers.method.vapour().isForBoilingLoops()) {
            return;
        }
        double top = numbers.pressures.cold
                - StaticHead.of(head).si()
                - numbers.job.pressures().place().coldRaisePascals();
        LoopFluid fluid = numbers.job.loop().fluid();
        if (!(top > 0) || !fluid.isLiquidSi(numbers.states.hotKelvins(), top)) {
            warnings.add(new Caution(
                    "At the top of the loop the fluid may flash to vapour at "
                            + numbers.states.hot().textInBothSystems() + ", where its vapour pressure is "
                            + fluid.vapourPressure(numbers.states.hot()).text(UnitSystem.SI)
                            + ": raise the cold pressure.",
                    fluid.vapourPressureSource()));
        }
    }
}
