package org.ullage.examples.demo;

import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Workings;

/** How the answer was reached, in one unit system. */
record WorkingsSection(Workings workings, String heading, UnitSystem system) implements Section {

    @Override
    public void print(Page page) {
        page.heading(heading);
        workings.text(system).lines().forEach(page::line);
    }
}
