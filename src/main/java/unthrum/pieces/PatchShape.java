package unthrum.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The rectangle of a damping patch in the middle of its bay: of the bay's own proportions, or one side stretched or
 * shortened by a quarter at most where whole widths of a sheet then make it in fewer pieces.
 */
final class PatchShape {

    /** So much may a side differ from the bay's proportions. Common practice, no source. */
    private static final double STRETCH = 0.25;

    private final Box bay;
    private final SheetSize sheet;
    private final Joints joints;
    private final double area;
    private final double length;

    /** @param coverage share of the bay, 0 to 1 */
    PatchShape(Box bay, double coverage, SheetSize sheet, Joints joints) {
        this.bay = bay;
        this.sheet = sheet;
        this.joints = joints;
        this.area = (double) bay.length() * bay.width() * coverage;
        this.length = bay.length() * Math.sqrt(coverage);
    }

    Box best() {
        List<Double> lengths = new ArrayList<>(List.of(length));
        for (int side : List.of(sheet.length(), sheet.width())) {
            for (int n = 1; n * side <= Math.max(bay.length(), bay.width()); n++) {
                lengths.add((double) n * side);
                lengths.add(area / (n * side));
            }
        }
        return lengths.stream().filter(this::fits)
                .sorted(Comparator.comparingDouble(l -> Math.abs(Math.log(l / length)))).map(this::centred)
                .min(Comparator.comparingInt(box -> joints.part(box, sheet).size())).orElseThrow();
    }

    private boolean fits(double candidate) {
        double tolerance = 0.5;
        return candidate <= bay.length() + tolerance && area / candidate <= bay.width() + tolerance
                && Math.abs(candidate / length - 1) <= STRETCH;
    }

    private Box centred(double candidate) {
        int along = (int) Math.min(bay.length(), Math.round(candidate));
        int across = (int) Math.min(bay.width(), Math.round(area / along));
        return new Box(bay.along() + (bay.length() - along) / 2, bay.across() + (bay.width() - across) / 2, along,
                across);
    }
}
