package org.ullage.examples.compare;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.ullage.examples.Program;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** A file of loops for the comparing commands, handed over as standard input. */
final class SomeLoops {

    private static final String FILE = Program.HEADER
            + "\n\"block, north\",ashrae,bladder,water,1000 L,10 degC,80 degC,steel,,,10 m,3 bar,,\n"
            + "given,ashrae,bladder,water,1000 L,10 degC,80 degC,,1 bar,2.5 bar,,,,1 bar\n"
            + "tight,ashrae,bladder,water,1000 L,10 degC,60 degC,,,,10 m,1.75 bar,,1 bar\n"
            + "steel,asme-iv,plain-steel,water,820 gal,,200 degF,,12 psi,27 psi,,,,14.696 psi abs\n"
            + "cold,ashrae,bladder,ethylene glycol 40 vol%,500 gal,40 degF,200 degF,steel,12 psi,60 psi,,,,14.696 psi abs\n"
            + "bad,ashrae,bladder,water,1000,10 degC,80 degC,steel,,,10 m,3 bar,,\n";

    private SomeLoops() {}

    static Program run(String... arguments) {
        return Program.run(new ByteArrayInputStream(FILE.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    static double litres(Map<String, String> row, String column) {
        return volume(row, column).in(Units.LITRE);
    }

    static double gallons(Map<String, String> row, String column) {
        return volume(row, column).in(Units.US_GALLON);
    }

    private static Volume volume(Map<String, String> row, String column) {
        return Volume.parse(String.valueOf(row.get(column)));
    }
}
