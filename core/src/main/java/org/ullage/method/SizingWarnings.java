package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.pressure.StaticHead;
import org.ullage.provenance.Source;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/** Collects what a reader must know about one answer. */
final class SizingWarnings {

    private static final Source ACCEPTANCE =
            Source.fromMemory("trade practice", "diaphragm vessels accept a part of their shell only");

    private static final Source HYDROSTATIC = Source.computed("hydrostatic law", "pressure at the top of the loop");

    private SizingWarnings() {}

    static List<Caution> of(SizingNumbers numbers) {
        List<Caution> warnings = new ArrayList<>();
        addAcceptanceUnknown(numbers, warnings);
        addPipe(numbers, warnings);
        warnings.addAll(numbers.method.expansion().warnings(numbers.job.loop().fluid(), numbers.states));
        if (numbers.job.vessel().kind() != VesselKind.OPEN) {
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
                            + TemperatureRange.both(numbers.states.hot()) + ", where its vapour pressure is "
                            + fluid.vapourPressure(numbers.states.hot()).text(UnitSystem.SI)
                            + ": raise the cold pressure.",
                    fluid.vapourPressureSource()));
        }
    }
}
