package org.ullage.diagnosis;

/** The values of a swing that an instrument, the record or the boiler room may have wrong. */
enum SwingInput {
    COLD_PRESSURE,
    COLD_TEMPERATURE,
    HOT_TEMPERATURE,
    HOT_GAS_RATIO,
    CONTENTS
}
