package org.ullage.examples.command;

import java.util.stream.Collectors;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeClass;
import org.ullage.charge.GaugeClasses;
import org.ullage.quantity.GaugePressure;
import picocli.CommandLine.Option;

/** The gauge at hand: where its scale ends and how good it is. */
public final class GaugeArguments {

    @Option(
            names = "--gauge",
            paramLabel = "END",
            required = true,
            description = "end of the scale of your gauge, which begins at zero, such as \"4 bar\"")
    private GaugePressure end = GaugePressure.bar(0);

    @Option(
            names = "--class",
            paramLabel = "CLASS",
            required = true,
            description = "its class or grade, such as \"class 1.6\" (EN 837-1) or \"grade B\" (ASME B40.100)")
    private String grade = "";

    /**
     * The gauge.
     *
     * @return from zero to the end of its scale
     * @throws IllegalArgumentException if its class is not known
     */
    public Gauge gauge() {
        return Gauge.of(GaugePressure.bar(0), end, accuracy());
    }

    private GaugeClass accuracy() {
        return GaugeClasses.all().stream()
                .filter(one -> one.grade().equals(grade.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--class \"" + grade + "\" is not known; known are "
                        + GaugeClasses.all().stream().map(GaugeClass::grade).collect(Collectors.joining(", "))));
    }
}
