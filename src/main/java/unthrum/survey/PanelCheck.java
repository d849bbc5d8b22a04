package unthrum.survey;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Places;
import unthrum.reading.Quantity;
import unthrum.reading.Words;

/** Reports what cannot be true together on one panel. Its size and parts have been read without a problem. */
record PanelCheck(PanelEntry panel, String path, Places places) {
    /** A circle through a measured rise and its chord may miss the measured radius by a quarter: tape measures. */
    /** m */
    private static final double ROUNDING = 1e-9;
    private static final double RADIUS_TOLERANCE = 0.25;
    /** No metal gets hotter than this of itself. Common practice, no source. */
    private static final double HOT_WITHOUT_SOURCE = 60;
    private static final Set<HeatSource> ENGINE_HEAT =
            Set.of(HeatSource.EXHAUST, HeatSource.TURBO, HeatSource.CATALYST);

    void all(boolean electric) {
        inTheWay();
        panel.shape().ifPresent(this::shape);
        PanelRibs.check(this);
        PanelDecays.check(this);
        clearance();
        panel.heat().ifPresent(heat -> heat(heat, electric));
        reachable();
        openings();
        fixings();
        covers();
    }

    double first() {
        return panel.size().get(0).si();
    }

    double second() {
        return panel.size().get(1).si();
    }

    double longer() {
        return Math.max(first(), second());
    }

    double shorter() {
        return Math.min(first(), second());
    }

    void report(String key, String found, String expected, String remedy) {
        places.problem(path + "." + key, found, expected, remedy);
    }

    static String length(double si) {
        return Dimension.LENGTH.show(si);
    }

    private void inTheWay() {
        if (panel.reach().equals(Optional.of(Reach.OPEN)) && panel.inTheWay().isPresent()) {
            report("in the way", "something in the way of a panel with open reach",
                    "reach: part or none, or nothing in the way", "");
        }
    }

    private void shape(PanelEntry.Shape shape) {
        double rise = shape.rise().map(Quantity::si).orElse(0.0);
        if (!PanelCurve.fits(this, shape)) {
            return;
        }
        if (shape.curve() == Curve.FLAT && (rise > 0 || shape.radius().isPresent())) {
            report("shape", "a flat panel with a " + (rise > 0 ? "rise" : "radius"),
                    "no rise and no radius, or a crowned or rolled panel", "");
        } else if (rise > shorter() / 2) {
            report("shape.rise", "a rise of " + length(rise),
                    "no more than half the shorter side, " + length(shorter() / 2), "");
        } else if (rise > 0 && shape.radius().isPresent() && !agree(rise, shape.radius().get().si())) {
            report("shape.radius", "a radius of " + shape.radius().get() + " with a rise of " + length(rise),
                    "about " + length(radius(first(), rise)) + " along the first side or "
                            + length(radius(second(), rise)) + " along the second", "write the one that was measured");
        }
    }

    private boolean agree(double rise, double radius) {
        return List.of(first(), second(), Math.hypot(first(), second())).stream()
                .anyMatch(chord -> Math.abs(radius(chord, rise) / radius - 1) <= RADIUS_TOLERANCE);
    }

    /** The radius of a circular segment, (c²/4 + h²) / 2h for a chord c and a rise h (Euclid, Elements III.35). */
    static double radius(double chord, double rise) {
        return (chord * chord / 4 + rise * rise) / (2 * rise);
    }

    private void clearance() {
        Optional<Quantity> gauge = panel.skin().flatMap(PanelEntry.Skin::gauge);
        double clearance = panel.clearance().map(Quantity::si).orElse(0.0);
        if (gauge.isPresent() && clearance > 0 && clearance < gauge.get().si()) {
            report("clearance", "a clearance of " + panel.clearance().get(),
                    "more than the skin's gauge of " + gauge.get(), "write '0 mm' where the metal is touched");
        }
    }

    private void heat(PanelEntry.Heat heat, boolean electric) {
        if (heat.from() == HeatSource.NONE && heat.peak().filter(p -> p.si() > HOT_WITHOUT_SOURCE).isPresent()) {
            report("heat.peak", "a peak of " + heat.peak().get() + " from no source",
                    "the source of the heat, or no more than 60 °C", "name what heats it, such as 'from: sun'");
        }
        if (electric && ENGINE_HEAT.contains(heat.from())) {
            report("heat", "heat from '" + Words.of(heat.from()) + "' on an electric vehicle",
                    "another source, or another drive", "");
        }
    }

    private void reachable() {
        if (panel.reachable().isPresent() && panel.reach().isPresent() && panel.reach().get() != Reach.PART) {
            report("reachable", "a reachable share with 'reach: " + Words.of(panel.reach().get()) + "'",
                    "a share only where the reach is part", "");
        }
    }

    private void openings() {
        List<PanelEntry.Opening> openings = panel.openings().orElse(List.of());
        for (int i = 0; i < openings.size(); i++) {
            PanelEntry.Opening opening = openings.get(i);
            larger("openings[" + i + "].size", opening.kind(), opening.size());
            onPanel("openings[" + i + "].at", opening.kind(), opening.at());
            if (opening.at().isPresent() && opening.count().orElse(1) > 1) {
                report("openings[" + i + "].count", opening.count().get() + " holes at one place",
                        "one entry for each hole that has a place", "");
            }
        }
    }

    private void fixings() {
        List<PanelEntry.Fixing> fixings = panel.fixings().orElse(List.of());
        for (int i = 0; i < fixings.size(); i++) {
            PanelEntry.Fixing fixing = fixings.get(i);
            larger("fixings[" + i + "].size", fixing.kind(), fixing.size());
            onPanel("fixings[" + i + "].at", fixing.kind(), fixing.at());
        }
    }

    private void onPanel(String key, Enum<?> kind, Optional<List<Quantity>> at) {
        if (at.isPresent() && (at.get().get(0).si() > first() || at.get().get(1).si() > second())) {
            report(key, "a " + Words.of(kind) + " at " + pair(at.get()),
                    "a place on the panel of " + pair(panel.size()), "");
        }
    }

    private void larger(String key, Enum<?> kind, Optional<Quantity> size) {
        if (size.isPresent() && size.get().si() > longer()) {
            report(key, "a " + Words.of(kind) + " of " + size.get(),
                    "no more than the panel's longer side, " + length(longer()), "");
        }
    }

    private void covers() {
        List<PanelEntry.Cover> covers = panel.covers().orElse(List.of());
        for (int i = 0; i < covers.size(); i++) {
            onPanel("covers[" + i + "].at", covers.get(i).kind(), covers.get(i).at());
            if (covers.get(i).size().filter(this::overhangs).isPresent()) {
                report("covers[" + i + "].size", "a " + Words.of(covers.get(i).kind()) + " of "
                        + pair(covers.get(i).size().get()), "no more than the panel of " + pair(panel.size()), "");
            } else if (sticksOut(covers.get(i))) {
                report("covers[" + i + "].at", "a " + Words.of(covers.get(i).kind()) + " of "
                        + pair(covers.get(i).size().get()) + " with its middle at " + pair(covers.get(i).at().get()),
                        "all of it on the panel of " + pair(panel.size()), "measure to the middle of the cover");
            }
        }
    }

    private boolean sticksOut(PanelEntry.Cover cover) {
        if (cover.at().isEmpty() || cover.size().isEmpty()) {
            return false;
        }
        double along = Math.min(cover.at().get().get(0).si(), first() - cover.at().get().get(0).si());
        double across = Math.min(cover.at().get().get(1).si(), second() - cover.at().get().get(1).si());
        return along < cover.size().get().get(0).si() / 2 - ROUNDING
                || across < cover.size().get().get(1).si() / 2 - ROUNDING;
    }

    private boolean overhangs(List<Quantity> size) {
        double a = size.get(0).si();
        double b = size.get(1).si();
        return Math.max(a, b) > longer() || Math.min(a, b) > shorter();
    }

    private static String pair(List<Quantity> size) {
        return size.get(0) + " by " + size.get(1);
    }
}
