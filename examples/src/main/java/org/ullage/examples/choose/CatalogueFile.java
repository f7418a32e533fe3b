package org.ullage.examples.choose;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.file.Quoted;
import org.ullage.examples.file.SheetFile;
import org.ullage.examples.file.SheetLine;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.selection.Catalogue;
import org.ullage.selection.CatalogueItem;
import org.ullage.selection.CatalogueItemBuilder;
import org.ullage.vessel.VesselKind;

/** A catalogue as a CSV list of vessels that can be had. */
public final class CatalogueFile {

    private static final String ID = "id";
    private static final String KIND = "kind";
    private static final String NOMINAL = "nominal";
    private static final String ACCEPTANCE_LIMIT = "acceptance_limit";
    private static final String MAX_PRESSURE = "max_pressure";
    private static final String MAX_TEMPERATURE = "max_temperature";
    private static final String EMPTY_MASS = "empty_mass";
    private static final String DIAMETER = "diameter";
    private static final String FOOTPRINT = "footprint";
    private static final String HEIGHT = "height";
    private static final String CONNECTION = "connection";
    private static final String PRICE = "price";
    private static final String STOCK = "stock";

    private static final List<String> COLUMNS = List.of(
            ID,
            KIND,
            NOMINAL,
            ACCEPTANCE_LIMIT,
            MAX_PRESSURE,
            MAX_TEMPERATURE,
            EMPTY_MASS,
            DIAMETER,
            FOOTPRINT,
            HEIGHT,
            CONNECTION,
            PRICE,
            STOCK);

    private CatalogueFile() {}

    /**
     * Reads a catalogue.
     *
     * @param file the file
     * @return the catalogue
     * @throws BadFileException if it is not CSV in UTF-8, its header is not understood, or a line cannot be read; every bad line is
     *     named with its column
     */
    public static Catalogue read(InputFile file) throws BadFileException {
        return file.read(CatalogueFile::read);
    }

    private static Catalogue read(InputStream stream) throws IOException, BadFileException {
        List<CatalogueItem> items = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (SheetLine line : SheetFile.read(stream, COLUMNS)) {
            try {
                items.add(item(line));
            } catch (IllegalArgumentException refusal) {
                String message = String.valueOf(refusal.getMessage());
                refusals.add(message.startsWith("line ") ? message : "line " + line.number() + ": " + message);
            }
        }
        if (!refusals.isEmpty()) {
            throw new BadFileException(String.join(System.lineSeparator(), refusals));
        }
        try {
            return Catalogue.of(items);
        } catch (IllegalArgumentException refusal) {
            throw new BadFileException(String.valueOf(refusal.getMessage()));
        }
    }

    private static CatalogueItem item(SheetLine line) {
        line.requireWhole();
        CatalogueItemBuilder item = CatalogueItem.named(
                        line.required(ID, text -> text), line.required(KIND, CatalogueFile::kind))
                .nominal(line.required(NOMINAL, Volume::parse))
                .maximum(
                        line.required(MAX_PRESSURE, GaugePressure::parse),
                        line.required(MAX_TEMPERATURE, Temperature::parse))
                .emptyMass(line.required(EMPTY_MASS, Mass::parse))
                .connection(line.required(CONNECTION, text -> text))
                .price(line.required(PRICE, CatalogueFile::price));
        Volume limit = line.optional(ACCEPTANCE_LIMIT, Volume::parse);
        item = limit == null ? item : item.acceptanceLimit(limit);
        Integer stock = line.optional(STOCK, CatalogueFile::pieces);
        item = stock == null ? item : item.stock(stock);
        Length height = line.required(HEIGHT, Length::parse);
        Area footprint = line.optional(FOOTPRINT, Area::parse);
        return footprint == null
                ? item.upright(line.required(DIAMETER, Length::parse), height).build()
                : item.standing(footprint, height).build();
    }

    private static VesselKind kind(String text) {
        return Arrays.stream(VesselKind.values())
                .filter(kind -> kind.word().equals(text)
                        || kind.word().replace(' ', '-').equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(Quoted.of(text) + " is not a kind of vessel; kinds are "
                        + Arrays.stream(VesselKind.values())
                                .map(VesselKind::word)
                                .collect(Collectors.joining(", "))));
    }

    private static BigDecimal price(String text) {
        try {
            return new BigDecimal(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    Quoted.of(text) + " is not a plain number; leave out the currency, all prices are in one", e);
        }
    }

    private static int pieces(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(Quoted.of(text) + " is not a whole number of pieces", e);
        }
    }
}
