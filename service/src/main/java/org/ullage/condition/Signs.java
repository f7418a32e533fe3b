package org.ullage.condition;

import org.ullage.provenance.Source;

/** Where the signs of eye and nose and the scales of instruments come from. */
final class Signs {

    static final Source WATER_LOOK = Source.secondHand(
            "VDI 2035 Part 1", "2021-03, look of the water after five minutes", "trade article on the guideline");

    static final Source AGED_GLYCOL =
            Source.published("Home Power magazine, article on glycol life and pH", "dark, burnt smell");

    static final Source FIELD_CASE =
            Source.published("trade report of a failed antifreeze", "pH 6.1, mouldy, froze at 0 degF");

    static final Source JUDGEMENT = Source.commonPractice("judgement of the trade, without a document");

    static final Source PLAUSIBLE =
            Source.commonPractice("end of the scale of a usual instrument; more is a slip of the unit");

    private Signs() {}
}
