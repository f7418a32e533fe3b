package org.ullage.operation;

import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** How the modulus of cross-linked polyethylene falls with temperature, straight lines between the values known. */
final class PolyethyleneModulus {

    private static final Source REMEMBERED = Source.fromMemory(
            "handbook values of cross-linked polyethylene pipe, short-time modulus", "indicative only");

    private record Row(double celsius, double megapascals, Source source) {

        double towards(Row next, double between) {
            double share = (between - celsius) / (next.celsius - celsius);
            return megapascals + share * (next.megapascals - megapascals);
        }
    }

    private static final List<Row> ROWS = List.of(
            new Row(10, 900, REMEMBERED),
            new Row(20, 800, REMEMBERED),
            new Row(40, 500, REMEMBERED),
            new Row(60, 350, REMEMBERED),
            new Row(80, 250, REMEMBERED));

    private PolyethyleneModulus() {}

    static WallMaterial at(Temperature temperature) {
        double celsius = temperature.in(Units.CELSIUS);
        for (int i = 1; i < ROWS.size(); i++) {
            Row below = ROWS.get(i - 1);
            Row above = ROWS.get(i);
            if (celsius >= below.celsius && celsius <= above.celsius) {
                double megapascals = below.towards(above, celsius);
                String name = "PE-X at " + temperature.text(Units.CELSIUS);
                return WallMaterial.of(name, megapascals, 180e-6, 0.45, REMEMBERED);
            }
        }
        throw new OutOfRangeException(
                "temperature of a PE-X wall",
                temperature.textInBothSystems(),
                "from 10 degC to 80 degC",
                "give the modulus of the pipe at its temperature");
    }
}
