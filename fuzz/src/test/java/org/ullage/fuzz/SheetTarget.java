package org.ullage.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ullage.examples.choose.ChooseCommand;
import org.ullage.examples.contents.ContentsCommand;
import org.ullage.examples.size.SizeCommand;
import org.ullage.examples.support.SupportCommand;
import org.ullage.published.Methods;

/** The CSV files of the program: loops, catalogues, supports and take-offs, with good cells and hostile ones. */
final class SheetTarget implements Target {

    private static final String LOOPS =
            "id,method,vessel,fluid,contents,cold,hot,pipe,cold_pressure,final_pressure,static_head,relief_setting,precharge,atmosphere";
    private static final String CATALOGUE =
            "id,kind,nominal,acceptance_limit,max_pressure,max_temperature,empty_mass,diameter,height,connection,price,stock";
    private static final String SUPPORTS =
            "id,nominal,empty_mass,rating,stub_standard,stub_size,stub_threaded,stub_arm,bracket_arm,"
                    + "bracket_rows,top_anchors,all_anchors,anchor_tension,anchor_shear,lift_reach,lift_from,lift_to";
    private static final String TAKE_OFF = "item,standard,size,length,count,volume";

    private final String oneLoop = oneLoop();

    @Override
    public String name() {
        return "sheets";
    }

    @Override
    public double share() {
        return 0.0005;
    }

    @Override
    public Object ask(Draw draw) {
        int kind = draw.below(10);
        if (kind < 6) {
            String[] options = draw.of(List.of(
                    new String[] {"-"},
                    new String[] {"-"},
                    new String[] {"-"},
                    new String[] {"--json", "-"},
                    new String[] {"--workings", "-"},
                    new String[] {"--methods", "-"}));
            requireFinite(Programs.run(SizeCommand::reading, file(LOOPS, SheetTarget::loop, draw), options));
        } else if (kind < 8) {
            requireFinite(Programs.run(
                    ChooseCommand::new,
                    file(CATALOGUE, SheetTarget::item, draw),
                    oneLoop,
                    "--id",
                    "yard",
                    "--catalogue",
                    "-"));
        } else if (kind < 9) {
            requireFinite(Programs.run(SupportCommand::new, file(SUPPORTS, SheetTarget::support, draw), "-"));
        } else {
            requireFinite(Programs.run(ContentsCommand::new, file(TAKE_OFF, SheetTarget::piece, draw), "-"));
        }
        return null;
    }

    private interface Row {
        List<String> cells(Draw draw);
    }

    /** Cells may hold such words themselves, and an error repeats them, so only a cell that is a number counts. */
    private static void requireFinite(String printed) {
        if (printed.contains(",NaN ") || printed.contains(",Infinity ") || printed.contains("= NaN")) {
            throw new Fault("printed: " + printed);
        }
    }

    private static byte[] file(String header, Row row, Draw draw) {
        StringBuilder file = new StringBuilder(draw.chance(0.05) ? "\ufeff" : "");
        file.append(draw.chance(0.03) ? Texts.spoilt(header, draw) : header).append(draw.of("\n", "\r\n"));
        for (int i = 1 + draw.below(3); i > 0; i--) {
            file.append(line(row.cells(draw), draw)).append(draw.of("\n", "\r\n", "\n"));
        }
        String text = draw.chance(0.05) ? Texts.spoilt(file.toString(), draw) : file.toString();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (draw.chance(0.02)) {
            bytes[draw.below(bytes.length)] = (byte) draw.below(256);
        }
        return bytes;
    }

    private static String line(List<String> cells, Draw draw) {
        List<String> written = new ArrayList<>();
        for (String cell : cells) {
            String text = draw.chance(0.01) ? Texts.any(draw) : draw.chance(0.02) ? Texts.spoilt(cell, draw) : cell;
            boolean quoted = text.matches("(?s).*[\",\r\n].*") || draw.chance(0.1);
            written.add(quoted && draw.chance(0.98) ? '"' + text.replace("\"", "\"\"") + '"' : text);
        }
        return String.join(",", written);
    }

    private static String cell(Draw draw, double low, double high, String unit) {
        return (draw.chance(0.01) ? Texts.number(draw) : Double.toString(draw.number(low, high))) + " " + unit;
    }

    private static String or(Draw draw, String blank, String cell) {
        return draw.chance(0.5) ? blank : cell;
    }

    private static List<String> loop(Draw draw) {
        boolean bySetting = draw.chance(0.5);
        return List.of(
                "yard",
                draw.of(Methods.all()).name(),
                draw.of("diaphragm", "bladder", "plain-steel", "open"),
                draw.of(
                        "water",
                        "water/if97",
                        "water/kell",
                        "propylene glycol 30 vol%",
                        "ethylene glycol 40 mass%/melinder"),
                cell(draw, 50, 5000, draw.of("L", "gal")),
                cell(draw, 2, 20, "degC"),
                cell(draw, 40, 105, "degC"),
                draw.of("", "steel", "copper", "none"),
                bySetting ? "" : cell(draw, 0.5, 1.5, "bar"),
                bySetting ? "" : cell(draw, 2, 5, "bar"),
                bySetting ? cell(draw, 1, 12, "m") : "",
                bySetting ? cell(draw, 2.5, 6, "bar") : "",
                or(draw, "", cell(draw, 0.3, 0.7, "bar")),
                or(draw, "", draw.of("420 m", "101.3 kPa", "14.7 psi abs")));
    }

    private static List<String> item(Draw draw) {
        return List.of(
                "V" + draw.below(1000),
                draw.of("diaphragm", "diaphragm", "bladder"),
                cell(draw, 20, 300, "L"),
                or(draw, "", cell(draw, 5, 20, "L")),
                cell(draw, 4, 10, "bar"),
                cell(draw, 80, 110, "degC"),
                cell(draw, 3, 60, "kg"),
                cell(draw, 280, 700, "mm"),
                cell(draw, 370, 1500, "mm"),
                "R 1",
                draw.below(500) + ".50",
                or(draw, "", Integer.toString(1 + draw.below(9))));
    }

    private static List<String> support(Draw draw) {
        boolean stub = draw.chance(0.4);
        return List.of(
                "a vessel",
                cell(draw, 10, 200, "L"),
                or(draw, "", cell(draw, 3, 40, "kg")),
                cell(draw, 4, 10, "bar"),
                stub ? "ASTM B88 type L" : "",
                stub ? draw.of("1/2", "3/4", "1") : "",
                stub ? draw.of("yes", "no") : "",
                stub ? cell(draw, 50, 400, "mm") : "",
                stub ? "" : cell(draw, 150, 400, "mm"),
                stub ? "" : cell(draw, 200, 400, "mm"),
                stub ? "" : "2",
                stub ? "" : "4",
                stub ? "" : cell(draw, 500, 3000, "N"),
                stub ? "" : cell(draw, 500, 3000, "N"),
                cell(draw, 0.3, 0.6, "m"),
                cell(draw, 0.5, 1.5, "m"),
                cell(draw, 0.3, 1, "m"));
    }

    private static List<String> piece(Draw draw) {
        return draw.chance(0.6)
                ? List.of("pipe", "EN 1057", draw.of("22 x 1", "15 x 1", "28 x 1.5"), cell(draw, 1, 200, "m"), "", "")
                : List.of("boiler", "", "", "", Integer.toString(draw.below(50)), cell(draw, 1, 50, "L"));
    }

    private static String oneLoop() {
        try {
            Path file = Files.createTempFile("loops", ".csv");
            file.toFile().deleteOnExit();
            Files.writeString(
                    file, LOOPS + "\nyard,ashrae,diaphragm,water,1150 L,10 degC,80 degC,steel,,,9.5 m,3 bar,,420 m\n");
            return file.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
