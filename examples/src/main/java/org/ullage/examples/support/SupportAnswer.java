package org.ullage.examples.support;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ullage.quantity.UnitSystem;
import org.ullage.support.Bracket;
import org.ullage.support.LimitCheck;
import org.ullage.support.PipeStub;
import org.ullage.support.SeismicForce;
import org.ullage.support.VesselRemoval;
import org.ullage.support.VesselWeight;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * What came of one line.
 *
 * @param weight of the vessel
 * @param earthquake the push on it, if the line gives the ground motion
 * @param stub the check of a pipe stub that carries it, if it hangs on one
 * @param bracket the check of a wall bracket, if it stands on one
 * @param removal how it may be taken off, if the line gives the lift
 */
record SupportAnswer(
        VesselWeight weight,
        Optional<SeismicForce> earthquake,
        Optional<PipeStub> stub,
        Optional<Bracket> bracket,
        Optional<VesselRemoval> removal) {

    static SupportAnswer of(SupportLine line) {
        VesselWeight weight = line.weight();
        return new SupportAnswer(
                weight, line.earthquake(weight), line.stub(weight), line.bracket(weight), line.removal(weight));
    }

    /** Every limit that was held against, in the order of the work: hold it, then take it off. */
    List<LimitCheck<?>> checks() {
        List<LimitCheck<?>> checks = new ArrayList<>();
        stub.ifPresent(held -> checks.add(held.check()));
        bracket.ifPresent(held -> {
            checks.add(held.tensionCheck());
            checks.add(held.shearCheck());
        });
        removal.ifPresent(lift -> {
            checks.add(lift.waterlogged());
            checks.add(lift.drained());
        });
        return checks;
    }

    /** What is said of the line, one text for each thing that was looked at. */
    List<String> texts(UnitSystem system) {
        List<String> texts = new ArrayList<>(List.of(weight.text(system)));
        earthquake.ifPresent(push -> texts.add(push.text(system)));
        stub.ifPresent(held -> texts.add(held.text(system)));
        bracket.ifPresent(held -> texts.add(held.text(system)));
        removal.ifPresent(lift -> texts.add(lift.text(system)));
        return texts;
    }

    /** The steps behind it. */
    List<Workings> workings() {
        List<Workings> workings = new ArrayList<>(List.of(weight.workings()));
        earthquake.ifPresent(push -> workings.add(push.workings()));
        stub.ifPresent(held -> workings.add(held.workings()));
        bracket.ifPresent(held -> workings.add(held.workings()));
        return workings;
    }

    /** What to mind, each once. */
    Set<Caution> cautions() {
        Set<Caution> cautions = new LinkedHashSet<>(weight.cautions());
        earthquake.ifPresent(push -> cautions.addAll(push.cautions()));
        stub.ifPresent(held -> cautions.addAll(held.cautions()));
        bracket.ifPresent(held -> cautions.addAll(held.cautions()));
        removal.ifPresent(lift -> cautions.addAll(lift.cautions()));
        return cautions;
    }
}
