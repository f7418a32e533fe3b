package org.ullage.support;

import static org.ullage.support.SpacingRule.IMC;
import static org.ullage.support.SpacingRule.IRC_2018;
import static org.ullage.support.SpacingRule.MSS_GUIDE;
import static org.ullage.support.SpacingRule.NEW_JERSEY_2018;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.Units;

/**
 * A row of a hanger rule: one size, or all sizes from one to another.
 *
 * @param rule whose rule
 * @param pipe kind of pipe
 * @param from smallest nominal size
 * @param to largest nominal size
 * @param span greatest distance
 * @param source where it comes from
 */
record SpacingRow(SpacingRule rule, SpacedPipe pipe, String from, String to, Length span, Source source) {

    /** Nominal sizes in rising order. */
    private static final List<String> SIZES = List.of(
            "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6",
            "8", "10", "12");

    private static final String SMALLEST = SIZES.get(0);
    private static final String LARGEST = SIZES.get(SIZES.size() - 1);

    private static final Source MSS = Source.secondHand(
            "MSS SP-69 / SP-58, Pipe Hangers and Supports", "guide spans", "two open engineering references");
    private static final Source MSS_REMEMBERED =
            Source.fromMemory("MSS SP-69 / SP-58, Pipe Hangers and Supports", "guide spans");
    private static final Source IRC = Source.published("International Residential Code (IRC)", "2018, Table P2605.1");
    private static final Source IRC_REMEMBERED =
            Source.fromMemory("International Residential Code (IRC)", "2018, Table P2605.1");
    private static final Source IMC_305 =
            Source.secondHand("International Mechanical Code (IMC)", "Table 305.4", "two open pages on pipe support");
    private static final Source NEW_JERSEY =
            Source.published("New Jersey Plumbing Code", "2018, chapter 8, hangers and supports");

    private static final List<SpacingRow> ROWS = rows();

    static List<SpacingRow> of(SpacingRule rule, SpacedPipe pipe) {
        return ROWS.stream().filter(row -> row.rule == rule && row.pipe == pipe).toList();
    }

    boolean covers(String size) {
        int place = SIZES.indexOf(size);
        return place >= SIZES.indexOf(from) && place <= SIZES.indexOf(to);
    }

    String text() {
        return from.equals(to) ? from : from + " to " + to;
    }

    private static List<SpacingRow> rows() {
        List<SpacingRow> rows = new ArrayList<>();
        guide(rows, SpacedPipe.STEEL, 7, MSS, "3/4", "1");
        guide(rows, SpacedPipe.STEEL, 7, MSS_REMEMBERED, "1/2", "1-1/4");
        guide(rows, SpacedPipe.STEEL, 9, MSS_REMEMBERED, "1-1/2");
        guide(rows, SpacedPipe.STEEL, 10, MSS_REMEMBERED, "2");
        guide(rows, SpacedPipe.STEEL, 11, MSS, "2-1/2");
        guide(rows, SpacedPipe.STEEL, 12, MSS_REMEMBERED, "3");
        guide(rows, SpacedPipe.STEEL, 14, MSS, "4");
        guide(rows, SpacedPipe.STEEL, 17, MSS_REMEMBERED, "6");
        guide(rows, SpacedPipe.STEEL, 19, MSS, "8");
        guide(rows, SpacedPipe.STEEL, 22, MSS_REMEMBERED, "10");
        guide(rows, SpacedPipe.STEEL, 23, MSS, "12");
        guide(rows, SpacedPipe.STEEL_STEAM, 8, MSS, "1/2");
        guide(rows, SpacedPipe.STEEL_STEAM, 9, MSS, "3/4", "1");
        guide(rows, SpacedPipe.STEEL_STEAM, 12, MSS, "1-1/2");
        guide(rows, SpacedPipe.STEEL_STEAM, 13, MSS, "2");
        guide(rows, SpacedPipe.STEEL_STEAM, 14, MSS_REMEMBERED, "2-1/2");
        guide(rows, SpacedPipe.STEEL_STEAM, 15, MSS, "3");
        guide(rows, SpacedPipe.STEEL_STEAM, 17, MSS, "4");
        guide(rows, SpacedPipe.STEEL_STEAM, 21, MSS, "6");
        guide(rows, SpacedPipe.STEEL_STEAM, 24, MSS, "8");
        guide(rows, SpacedPipe.STEEL_STEAM, 26, MSS, "10");
        guide(rows, SpacedPipe.STEEL_STEAM, 30, MSS, "12");
        guide(rows, SpacedPipe.COPPER_TUBE, 5, MSS, "1/2", "3/4");
        guide(rows, SpacedPipe.COPPER_TUBE, 6, MSS, "1");
        guide(rows, SpacedPipe.COPPER_TUBE, 7, MSS_REMEMBERED, "1-1/4");
        guide(rows, SpacedPipe.COPPER_TUBE, 8, MSS, "1-1/2", "2");
        guide(rows, SpacedPipe.COPPER_TUBE, 9, MSS, "2-1/2");
        guide(rows, SpacedPipe.COPPER_TUBE, 10, MSS, "3");
        guide(rows, SpacedPipe.COPPER_TUBE, 12, MSS, "4");
        guide(rows, SpacedPipe.COPPER_TUBE, 14, MSS, "6");
        guide(rows, SpacedPipe.COPPER_TUBE, 16, MSS_REMEMBERED, "8");
        guide(rows, SpacedPipe.COPPER_TUBE, 18, MSS_REMEMBERED, "10");
        guide(rows, SpacedPipe.COPPER_TUBE, 19, MSS, "12");
        rows.add(feet(IRC_2018, SpacedPipe.STEEL, SMALLEST, LARGEST, 12, IRC_REMEMBERED));
        rows.add(feet(IRC_2018, SpacedPipe.COPPER_TUBE, SMALLEST, "1-1/4", 6, IRC_REMEMBERED));
        rows.add(feet(IRC_2018, SpacedPipe.COPPER_TUBE, "1-1/2", LARGEST, 10, IRC));
        rows.add(inches(IRC_2018, SpacedPipe.PEX, SMALLEST, "1", 32, IRC));
        rows.add(feet(IRC_2018, SpacedPipe.PEX, "1-1/4", LARGEST, 4, IRC));
        rows.add(inches(IRC_2018, SpacedPipe.PEX_AL_PEX, SMALLEST, LARGEST, 32, IRC));
        rows.add(feet(IRC_2018, SpacedPipe.CPVC, SMALLEST, "1", 3, IRC));
        rows.add(feet(IRC_2018, SpacedPipe.CPVC, "1-1/4", LARGEST, 4, IRC_REMEMBERED));
        rows.add(feet(IRC_2018, SpacedPipe.ABS, SMALLEST, LARGEST, 4, IRC));
        rows.add(feet(IRC_2018, SpacedPipe.CAST_IRON, SMALLEST, LARGEST, 5, IRC));
        rows.add(feet(IMC, SpacedPipe.STEEL, SMALLEST, LARGEST, 12, IMC_305));
        rows.add(feet(IMC, SpacedPipe.STEEL_TUBING, SMALLEST, LARGEST, 8, IMC_305));
        rows.add(feet(IMC, SpacedPipe.COPPER_PIPE, SMALLEST, LARGEST, 12, IMC_305));
        rows.add(feet(IMC, SpacedPipe.COPPER_TUBE, SMALLEST, "1-1/4", 6, IMC_305));
        rows.add(feet(IMC, SpacedPipe.COPPER_TUBE, "1-1/2", LARGEST, 10, IMC_305));
        rows.add(inches(IMC, SpacedPipe.PEX, SMALLEST, "1", 32, IMC_305));
        rows.add(feet(IMC, SpacedPipe.CPVC, SMALLEST, "1", 3, IMC_305));
        rows.add(feet(IMC, SpacedPipe.CPVC, "1-1/4", LARGEST, 4, IMC_305));
        rows.add(feet(NEW_JERSEY_2018, SpacedPipe.STEEL, SMALLEST, "3/4", 10, NEW_JERSEY));
        rows.add(feet(NEW_JERSEY_2018, SpacedPipe.STEEL, "1", LARGEST, 12, NEW_JERSEY));
        rows.add(feet(NEW_JERSEY_2018, SpacedPipe.COPPER_TUBE, SMALLEST, "1-1/4", 6, NEW_JERSEY));
        rows.add(feet(NEW_JERSEY_2018, SpacedPipe.COPPER_TUBE, "1-1/2", LARGEST, 10, NEW_JERSEY));
        return Collections.unmodifiableList(rows);
    }

    private static void guide(List<SpacingRow> rows, SpacedPipe pipe, double feet, Source source, String... sizes) {
        for (String size : sizes) {
            rows.add(feet(MSS_GUIDE, pipe, size, size, feet, source));
        }
    }

    private static SpacingRow feet(
            SpacingRule rule, SpacedPipe pipe, String from, String to, double feet, Source source) {
        return new SpacingRow(rule, pipe, from, to, Length.feet(feet), source);
    }

    private static SpacingRow inches(
            SpacingRule rule, SpacedPipe pipe, String from, String to, double inches, Source source) {
        return new SpacingRow(rule, pipe, from, to, Length.of(inches, Units.INCH), source);
    }
}
