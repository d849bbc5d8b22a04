package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.material.Figures;
import unthrum.material.Layer;
import unthrum.reasoning.Candidate.Cover;

/**
 * The covers and damping sheets of one panel that are worth offering when what there is must be shared: no cover of
 * which another is worth more and is lighter, cheaper and of no other layers.
 */
record Offers(List<Cover> covers, Candidates candidates, Limits limits, Dampers dampers,
              List<Layer> required, Scored best) {

    /** More covers of a panel than this bring sharing nothing that could be told. Common practice, no source. */
    private static final int MOST = 24;

    Options options() {
        int most = covers.stream().mapToInt(this::safe).max().orElse(0);
        List<Options.Offer> offers = new ArrayList<>();
        for (Cover cover : kept()) {
            boolean safe = safe(cover) == most;
            if (!cover.layup().isEmpty() && (cover.unpaid() > 0 && cover.gain() >= 0 || most > 0 && safe)) {
                offers.add(offer(cover, Optional.empty(), safe));
            }
            for (Laid sheet : candidates.of(Layer.DAMPING)) {
                boolean fits = limits.bear(cover.thickness() + sheet.stackThickness(), cover.mass());
                List<Options.Part> parts = fits ? dampers.parts(cover.layup(), sheet) : List.of();
                if (!parts.isEmpty() && limits.pair(Candidate.together(cover.layup(), sheet))) {
                    offers.add(offer(cover, Optional.of(new Options.Damped(sheet.material(), parts)), safe));
                }
            }
        }
        return new Options(offers);
    }

    private Options.Offer offer(Cover cover, Optional<Options.Damped> damping, boolean safe) {
        return new Options.Offer(cover.layup().layers(), cover.unpaid(), damping, safe);
    }

    private int safe(Cover cover) {
        return (int) required.stream().filter(l -> l == Layer.DAMPING || cover.layup().has(l)).count();
    }

    /** Always bare metal and the panel's own best cover; else what no other cover of the same layers beats. */
    private List<Cover> kept() {
        List<Cover> kept = new ArrayList<>();
        Layup own = best.layup().withoutDamping();
        List<Cover> ranked = covers.stream()
                .sorted(Comparator.comparingDouble((Cover c) -> -c.worth())
                        .thenComparingDouble(Cover::mass).thenComparingDouble(c -> c.layup().price())
                        .thenComparing(c -> c.layup().materials(), Figures::byFigures)).toList();
        for (Cover cover : ranked) {
            boolean always = cover.layup().isEmpty() || cover.layup().equals(own);
            if (always || kept.size() < MOST && kept.stream().noneMatch(k -> beats(k, cover))) {
                kept.add(cover);
            }
        }
        return kept;
    }

    private static boolean beats(Cover better, Cover cover) {
        return layers(better).equals(layers(cover)) && better.mass() <= cover.mass()
                && better.layup().price() <= cover.layup().price();
    }

    private static List<Layer> layers(Cover cover) {
        return cover.layup().layers().stream().map(Laid::layer).toList();
    }
}
