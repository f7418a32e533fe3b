package org.ullage.report;

/** Where the numbers of an axis stand on the drawing. */
record Scale(double first, double last, double firstPixel, double lastPixel) {

    static Scale of(Ticks ticks, double firstPixel, double lastPixel) {
        return new Scale(ticks.first(), ticks.last(), firstPixel, lastPixel);
    }

    double at(double number) {
        return firstPixel + (number - first) / (last - first) * (lastPixel - firstPixel);
    }
}
