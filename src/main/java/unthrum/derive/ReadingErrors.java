package unthrum.derive;

import unthrum.knowledge.Knowledge;
import unthrum.physics.Bay;
import unthrum.physics.Sheet;

/**
 * How far what a fitter reads off a panel may be off either way, m. The softest panel that the readings allow is
 * larger, thinner and flatter than read, the stiffest smaller, thicker and rounder.
 */
record ReadingErrors(double gauge, double size, double rise, double beadHeight) {

    /** No reading is off by more than this share of itself. Common practice, no source. */
    private static final double MOST = 0.2;

    static ReadingErrors of(Knowledge knowledge) {
        return new ReadingErrors(knowledge.number("usual/gauge-error"), knowledge.number("usual/size-error"),
                knowledge.number("usual/rise-error"), knowledge.number("usual/bead-height-error"));
    }

    Sheet thinner(Sheet sheet) {
        return gauge(sheet, -1);
    }

    Sheet thicker(Sheet sheet) {
        return gauge(sheet, 1);
    }

    private Sheet gauge(Sheet sheet, int way) {
        return new Sheet(sheet.youngsModulus(), sheet.poissonRatio(), sheet.density(),
                sheet.thickness() + way * Math.min(gauge, MOST * sheet.thickness()));
    }

    double longer(double side) {
        return side + Math.min(size, MOST * side);
    }

    double shorter(double side) {
        return side - Math.min(size, MOST * side);
    }

    Bay larger(Bay bay) {
        return new Bay(longer(bay.length()), longer(bay.width()), bay.lengthCurvature(), bay.widthCurvature());
    }

    Bay smaller(Bay bay) {
        return new Bay(shorter(bay.length()), shorter(bay.width()), bay.lengthCurvature(), bay.widthCurvature());
    }
}
