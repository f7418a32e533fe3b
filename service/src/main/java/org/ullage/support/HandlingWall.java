package org.ullage.support;

import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.Volume;

/**
 * The thinnest wall that a vessel shell is pressed from, whatever its rating. Between the sizes the rule was made with, the step to the
 * thicker wall comes early, which gives the heavier shell.
 */
enum HandlingWall {
    SMALL(1.2, 24, HandlingWall.rule()),
    MEDIUM(1.5, 80, HandlingWall.rule()),
    LARGE(2, 200, HandlingWall.rule()),
    TALL(3, 2000, HandlingWall.rule());

    private final double millimetres;
    private final double mostLitres;

    HandlingWall(double millimetres, double mostLitres, Source unused) {
        this.millimetres = millimetres;
        this.mostLitres = mostLitres;
    }

    private static Source rule() {
        return Source.commonPractice("thinnest wall that is pressed, by size");
    }

    static Length of(Volume nominal) {
        for (HandlingWall wall : values()) {
            if (nominal.compareTo(Volume.litres(wall.mostLitres)) <= 0) {
                return Length.millimetres(wall.millimetres);
            }
        }
        return Length.millimetres(TALL.millimetres);
    }
}
