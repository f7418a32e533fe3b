package org.ullage.examples.demo;

import java.util.List;
import org.ullage.workings.Caution;

/** What to watch. */
record CautionSection(String heading, List<Caution> cautions) implements Section {

    @Override
    public void print(Page page) {
        page.heading(heading);
        if (cautions.isEmpty()) {
            page.line("None.");
        }
        cautions.forEach(caution -> page.bullet(caution.toString()));
    }
}
