package org.ullage.examples.size;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.method.Method;
import org.ullage.published.Methods;
import org.ullage.vessel.VesselKind;

/** What a stranger needs to know about the file, for the help of the command. */
final class SizeHelp {

    private static final List<String> FORM = List.of(
            "",
            "The file begins with a header that names its columns, in any order. Values carry units:",
            "3000 gal, 1.2 m3, 40 degF, 80 degC, 10 psi, 1.5 bar, 9 m. Pressures are gauge unless the",
            "unit says abs (24.7 psi abs). A blank cell means: not given.",
            "");

    private static final List<String> COLUMNS = List.of(
            "  contents *      volume of the loop without the vessel",
            "  cold            lowest (or fill) temperature",
            "  hot             highest temperature in the sense of the method, see below",
            "  pipe            steel, copper, none (no credit for its growth) or blank",
            "  cold_pressure   pressure at the vessel when cold, taken as it is",
            "  final_pressure  pressure at the vessel when hot, taken as it is",
            "  static_head     in place of cold_pressure: height of the loop above the vessel",
            "  relief_setting  in place of final_pressure: the method's margins are applied",
            "  precharge       only where it differs from the method's rule",
            "  atmosphere      pressure of the air, or an altitude; 101.325 kPa if blank",
            "",
            "Columns with * are required. Volumes are answered in the unit of contents, pressures as",
            "gauge in the unit of the first of cold_pressure, final_pressure, relief_setting and",
            "precharge that is given, else in bar.",
            "");

    private static final List<String> CARE = List.of(
            "",
            "Pressurised hot water can injure and a full vessel is heavy. Local codes, the makers'",
            "instructions and the judgement of a licensed person come before these numbers.");

    private SizeHelp() {}

    /** The lines, ready for a formatter. */
    static String[] lines() {
        List<String> lines = new ArrayList<>(FORM);
        lines.add("  id *            any text; it is repeated in the answer");
        lines.add("  method *        a name from the list below");
        lines.add("  vessel *        "
                + Arrays.stream(VesselKind.values()).map(VesselKind::word).collect(Collectors.joining(", ")));
        lines.add("  fluid *         water, propylene glycol 30 vol%, ethylene glycol 40 mass%;");
        lines.add("                  a model may follow, as in water/if97");
        lines.addAll(COLUMNS);
        lines.add("Methods, and what each takes for hot:");
        Methods.all().forEach(method -> lines.add(methodLine(method)));
        lines.addAll(CARE);
        return lines.stream().map(line -> line.replace("%", "%%")).toArray(String[]::new);
    }

    private static String methodLine(Method method) {
        return String.format("  %-12s  %s", method.name(), method.hotBasis());
    }
}
