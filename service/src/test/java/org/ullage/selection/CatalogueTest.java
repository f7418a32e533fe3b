package org.ullage.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Area;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

class CatalogueTest {

    private static final CatalogueItem B80 = Vessels.plain("B80", 80, 90);
    private static final CatalogueItem B200 = Vessels.plain("B200", 200, 190);

    @Test
    void emptyOneIsRefused() {
        assertThatThrownBy(() -> Catalogue.of(List.of()))
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("catalogue item is missing");
    }

    @Test
    void idThatStandsTwiceIsRefused() {
        assertThatThrownBy(() -> Vessels.catalogue(B80, B200, Vessels.plain("B80", 100, 1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("id of catalogue item B80");
    }

    @Test
    void keepsItsItemsWhateverHappensToTheListTheyCameIn() {
        List<CatalogueItem> list = new ArrayList<>(List.of(B80, B200));
        Catalogue catalogue = Catalogue.of(list);
        list.clear();
        assertThat(catalogue.items()).containsExactly(B80, B200);
        assertThatThrownBy(() -> catalogue.items().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void choosesTheSameAfterAStream() throws IOException, ClassNotFoundException {
        Catalogue catalogue = Vessels.catalogue(B80, B200);
        Catalogue copy = overAStream(catalogue);
        assertThat(copy).isEqualTo(catalogue).hasSameHashCodeAs(catalogue);
        SelectionJob job = Vessels.litres(270);
        assertThat(copy.choose(job)).isEqualTo(catalogue.choose(job));
    }

    @Test
    void answersPassAStream() throws IOException, ClassNotFoundException {
        Catalogue catalogue = Vessels.catalogue(B80, B200);
        SelectionResult selection = catalogue.choose(Vessels.litres(270));
        SelectionResult shortage = catalogue.choose(Vessels.litres(270).within(Area.squareMetres(0.1)));
        assertThat(selection).isInstanceOf(Selection.class);
        assertThat(shortage).isInstanceOf(Shortage.class);
        for (SelectionResult result : List.of(selection, shortage)) {
            SelectionResult copy = overAStream(result);
            assertThat(copy).isEqualTo(result);
            assertThat(copy.text(UnitSystem.IP)).isEqualTo(result.text(UnitSystem.IP));
        }
    }

    @SuppressWarnings("unchecked")
    private static <T> T overAStream(T original) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(original);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }
}
