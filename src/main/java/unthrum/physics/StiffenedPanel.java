package unthrum.physics;

/**
 * First frequency of a flat panel with evenly spaced ribs or beads across its length.
 *
 * <p>A closed rib clamps the bays beside it: the bay's clear length is (a − n w)/(n + 1). A bead only holds them like a
 * hinge, and may itself be carried along: a Rayleigh estimate of the whole panel with the beads' EI, each with a strip
 * of skin of w + 0.2 b, bounds that. The lower of bay and whole counts.
 *
 * <p>Against finite elements: ribs 2 to 7 % high, beads within 10 %. Exception: with two beads on a panel with clamped
 * edges, where the whole panel governs, it came out 18 % low, since the beads' ends are held too, which the estimate
 * leaves out; such panels are outside its range. Source: Rayleigh's principle; the strip's width is common practice,
 * no source.
 */
public final class StiffenedPanel {

    private static final double STRIP_PER_SPAN = 0.2;

    private StiffenedPanel() {}

    /** The open bay between neighbours, of a panel with that many stiffeners across its length. */
    public static Bay clearBay(Bay panel, Stiffener stiffener, int count) {
        double clear = (panel.length() - count * stiffener.width()) / (count + 1);
        return new Bay(clear, panel.width(), panel.lengthCurvature(), panel.widthCurvature());
    }

    /** First frequency, Hz; the panel's own edges hinged or clamped. Or why it cannot be told. */
    public static Estimate<Double> first(Sheet sheet, Bay panel, Stiffener stiffener, int count, boolean clamped) {
        if (!panel.isFlat()) {
            return Estimate.outside("stiffeners on a curved panel: only its bays can be told");
        }
        if (count * stiffener.width() >= panel.length()) {
            return Estimate.outside("the stiffeners leave no bay open");
        }
        if (sheet.thickness() > ShellModes.THIN * clearBay(panel, stiffener, count).shorterSide()) {
            return Estimate.outside("the skin is too thick for its bays: thin-plate theory does not hold");
        }
        double bay = bay(sheet, panel, stiffener, count, clamped);
        double whole = whole(sheet, panel, stiffener, count, clamped);
        boolean bead = stiffener.kind() == Stiffener.Kind.PRESSED_BEAD;
        if (bead && clamped && count > 1 && whole < bay) {
            return Estimate.outside("several beads on a clamped panel: the estimate of the whole is too low");
        }
        return Estimate.within(Math.min(bay, whole));
    }

    /** The lowest bay by itself: the end bays beside one stiffener, the others between two. */
    static double bay(Sheet sheet, Bay panel, Stiffener stiffener, int count, boolean clamped) {
        Bay bay = clearBay(panel, stiffener, count);
        boolean held = stiffener.kind() == Stiffener.Kind.BOX_SECTION;
        BeamMode end = clamped && held
                ? BeamMode.clamped(1)
                : clamped || held ? BeamMode.hingedClamped(1) : BeamMode.hinged(1);
        BeamMode inner = held ? BeamMode.clamped(1) : BeamMode.hinged(1);
        BeamMode across = clamped ? BeamMode.clamped(1) : BeamMode.hinged(1);
        double atEnd = PlateModes.frequency(sheet.skin(), bay.length(), bay.width(), end, across);
        double between = PlateModes.frequency(sheet.skin(), bay.length(), bay.width(), inner, across);
        return count > 1 ? Math.min(atEnd, between) : atEnd;
    }

    /** The whole panel moving as one, stiffeners bending along, hinged at their own ends. */
    static double whole(Sheet sheet, Bay panel, Stiffener stiffener, int count, boolean clamped) {
        double a = panel.length();
        double b = panel.width();
        Skin skin = sheet.skin();
        BeamShape along = clamped ? BeamShape.clamped(1) : BeamShape.hinged(1);
        double plate = clamped ? PlateModes.clamped(skin, panel, 1, 1) : PlateModes.hinged(skin, panel, 1, 1);
        double strip = stiffener.width() + STRIP_PER_SPAN * b;
        double rigidity = sheet.youngsModulus() * stiffener.secondMoment(sheet.thickness(), strip);
        double clear = clearBay(panel, stiffener, count).length();
        double carried = 0;
        for (int i = 1; i <= count; i++) {
            double middle = i * clear + (i - 0.5) * stiffener.width();
            carried += Math.pow(along.at(middle / a - 0.5, 0), 2) / a;
        }
        double mass = skin.surfaceDensity() + stiffener.lineDensity(sheet.density()) * carried;
        double stiffness = Math.pow(2 * Math.PI * plate, 2) * skin.surfaceDensity()
                + rigidity * Math.pow(Math.PI / b, 4) * carried;
        return Math.sqrt(stiffness / mass) / (2 * Math.PI);
    }
}
