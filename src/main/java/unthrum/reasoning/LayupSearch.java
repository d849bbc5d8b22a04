package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.PanelAccount;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Figures;
import unthrum.material.Layer;
import unthrum.material.Material;

/**
 * The exact search over the catalogue: of all layups inside the limits the one that is worth most by the one account of
 * what it brings. Every admissible combination of covering layers is looked at, each with every damping sheet under it,
 * which lies on each bay where it is worth its weight.
 *
 * <p>Among layups that nobody could tell apart by what they bring: the lightest, the cheapest, the thinnest, the fewest
 * materials, then by the materials' own figures ({@link Figures}); a name never decides.
 */
final class LayupSearch {

    private static final Rung[] RUNGS = Rung.values();

    private final Candidates candidates;
    private final Limits limits;
    private final Worth worth;
    private final Dampers dampers;
    private final PanelAccount account;
    private final double alike;
    private final double alikePart;
    private final List<Cover> covers = new ArrayList<>();
    private final List<Scored> scored = new ArrayList<>();
    private final Map<Material, Scored> bestWith = new IdentityHashMap<>();
    private final Map<Rung, Scored> bestOnRung = new EnumMap<>(Rung.class);
    private final List<Layer> required;
    private final Scored best;
    private Optional<Scored> slight = Optional.empty();

    /** The steps of the ladder, from the best treatment of an airborne source down. */
    enum Rung {
        DECOUPLED_BARRIER, BARRIER_LAID_DIRECT, NO_BARRIER;

        static Rung of(Layup layup) {
            return !layup.has(Layer.BARRIER) ? NO_BARRIER
                    : layup.has(Layer.DECOUPLER) ? DECOUPLED_BARRIER : BARRIER_LAID_DIRECT;
        }
    }

    /**
     * Covering layers, with what they bring by themselves.
     *
     * @param unpaid their worth if they cost no money
     */
    record Cover(Layup layup, double gain, double trade, double worth, double unpaid) {
    }

    LayupSearch(Case panel, List<WeighedWant> wants, PanelAccount account, Knowledge knowledge, Catalogue catalogue) {
        this.limits = new Limits(panel, knowledge);
        this.account = account;
        this.candidates = new Candidates(panel, limits, wants, catalogue);
        this.worth = new Worth(knowledge, account, candidates.wanted());
        this.dampers = new Dampers(candidates, account, worth, knowledge);
        this.alike = knowledge.number("tell/alike");
        this.alikePart = knowledge.number("tell/alike-part");
        this.required = candidates.wanted().entrySet().stream()
                .filter(e -> e.getValue().stream().anyMatch(WeighedWant::isForSafety)).map(Map.Entry::getKey).toList();
        List<Layer> layers = candidates.wanted().keySet().stream().filter(l -> l != Layer.DAMPING).toList();
        combine(layers, 0, List.of());
        covers.forEach(this::dampen);
        candidates.of(Layer.DAMPING).stream().filter(s -> !bestWith.containsKey(s.material())).forEach(this::unworthy);
        this.best = choose(knowledge.number("worth/panel"));
    }

    /** Layers come in the order in which they lie; what a limit on the whole forbids, more layers do not mend. */
    private void combine(List<Layer> layers, int depth, List<Laid> soFar) {
        Layup layup = new Layup(soFar);
        if (!limits.bear(layup.thickness(), layup.mass())) {
            return;
        }
        if (depth < layers.size()) {
            combine(layers, depth + 1, soFar);
            for (Laid laid : candidates.of(layers.get(depth))) {
                List<Laid> more = new ArrayList<>(soFar);
                more.add(laid);
                combine(layers, depth + 1, more);
            }
            return;
        }
        if (limits.pair(layup)) {
            covers.add(cover(layup));
        }
    }

    private Cover cover(Layup layup) {
        double trade = 0;
        double cost = 0;
        double burden = 0;
        for (Laid laid : layup.layers()) {
            trade += worth.trade(laid);
            double unloved = alike * candidates.unloved(laid.material());
            cost += worth.cost(laid) + unloved;
            burden += worth.burden(laid) + unloved;
        }
        double gain = layup.isEmpty() ? 0 : account.gain(layup);
        return new Cover(layup, gain, trade, gain + trade - cost, gain + trade - burden);
    }

    /** The cover bare of damping, and with each damping sheet that is worth it. */
    private void dampen(Cover cover) {
        judge(cover, Optional.empty());
        for (Laid sheet : candidates.of(Layer.DAMPING)) {
            if (limits.bear(cover.layup().thickness() + sheet.stackThickness(), cover.layup().mass())) {
                judge(cover, Optional.of(sheet));
            }
        }
    }

    private void judge(Cover cover, Optional<Laid> sheet) {
        Optional<Dampers.Damped> damped = sheet.flatMap(s -> dampers.under(cover.layup(), s,
                limits.mass() - cover.layup().mass()));
        if (sheet.isPresent() && damped.isEmpty()) {
            return;
        }
        Scored next = scored(cover, damped);
        if (limits.pair(next.layup())) {
            scored.add(next);
            next.layup().layers().forEach(l -> bestWith.merge(l.material(), next, LayupSearch::better));
            bestOnRung.merge(Rung.of(next.layup()), next, LayupSearch::better);
        }
    }

    /** A sheet that is worth its weight on no bay: what it would gain all the same. */
    private void unworthy(Laid sheet) {
        Scored all = scored(covers.get(0), Optional.of(dampers.everywhere(covers.get(0).layup(), sheet)));
        if (limits.bear(all.layup().thickness(), all.layup().mass()) && limits.pair(all.layup())) {
            bestWith.put(sheet.material(), all);
        }
    }

    private static Scored scored(Cover cover, Optional<Dampers.Damped> damped) {
        Layup layup = damped.map(d -> together(cover.layup(), d.laid())).orElse(cover.layup());
        return new Scored(layup, cover.gain() + damped.map(Dampers.Damped::gain).orElse(0.0),
                cover.trade() + damped.map(Dampers.Damped::trade).orElse(0.0),
                cover.worth() + damped.map(Dampers.Damped::worth).orElse(0.0));
    }

    static Layup together(Layup cover, Laid damping) {
        List<Laid> layers = new ArrayList<>(cover.layers());
        layers.add(damping);
        layers.sort(Comparator.comparing(Laid::layer));
        return new Layup(layers);
    }

    private static Scored better(Scored a, Scored b) {
        return order().compare(a, b) <= 0 ? a : b;
    }

    private static Comparator<Scored> order() {
        return Comparator.comparingDouble((Scored s) -> -s.worth()).thenComparing(LayupSearch::tie);
    }

    /** What decides between layups that are worth alike. */
    static int tie(Scored a, Scored b) {
        return Comparator.comparingLong((Scored s) -> Math.round(s.layup().mass() * 1e6))
                .thenComparingLong(s -> Math.round(s.layup().price() * 1e6))
                .thenComparingLong(s -> Math.round(s.layup().thickness() * 1e9))
                .thenComparingInt(s -> s.layup().layers().size())
                .thenComparing(s -> s.layup().materials(), Figures::byFigures).compare(a, b);
    }

    /** Nothing where nothing is worth it; what safety asks for is laid as far as anything can be. */
    private Scored choose(double leastOfPanel) {
        int most = scored.stream().mapToInt(this::safe).max().orElse(0);
        List<Scored> open = new ArrayList<>(scored.stream().filter(s -> safe(s) == most).toList());
        if (most == 0) {
            double bare = account.bare();
            open.removeIf(s -> !s.layup().isEmpty() && !isWorthIt(s, bare, leastOfPanel));
        }
        Scored top = open.stream().min(order()).orElse(Scored.NOTHING);
        if (top.layup().isEmpty()) {
            slight = Stream.concat(scored.stream(), bestWith.values().stream())
                    .filter(s -> !s.layup().isEmpty() && safe(s) == most)
                    .min(Comparator.comparingDouble((Scored s) -> -s.gain()).thenComparing(LayupSearch::tie));
        }
        double enough = top.worth() - Math.min(alike, alikePart * Math.abs(top.worth()));
        return open.stream().filter(s -> s.worth() >= enough && s.layup().isEmpty() == top.layup().isEmpty())
                .min(LayupSearch::tie).orElse(Scored.NOTHING);
    }

    private int safe(Scored candidate) {
        return (int) required.stream().filter(candidate.layup()::has).count();
    }

    private static boolean isWorthIt(Scored candidate, double bare, double leastOfPanel) {
        return candidate.worth() > 0 && candidate.gain() >= -1e-12
                && (candidate.trade() > 0 || candidate.gain() >= leastOfPanel * bare);
    }

    /** The best layup; nothing when nothing is worth its weight. */
    Scored best() {
        return best;
    }

    /** Where nothing is laid: the layup that would gain most, and how little that is. */
    Optional<Scored> slight() {
        return slight;
    }

    /** What may be laid here. */
    Options options() {
        return new Offers(covers, candidates, limits, dampers, required, best).options();
    }

    /** What became of each material of a wanted layer. */
    List<Considered> considered() {
        List<Considered> all = new ArrayList<>();
        candidates.rejected().forEach((material, by) -> all.add(new Considered(material, by, Optional.empty(), false)));
        for (Laid laid : candidates.all()) {
            boolean chosen = best.layup().layers().stream().anyMatch(l -> l.material().equals(laid.material()));
            all.add(new Considered(laid.material(), List.of(), Optional.ofNullable(bestWith.get(laid.material())), chosen));
        }
        all.sort(Comparator.comparing((Considered c) -> c.material().layer())
                .thenComparing(c -> !c.chosen())
                .thenComparingDouble(c -> c.best().map(s -> -s.worth()).orElse(Double.POSITIVE_INFINITY))
                .thenComparing(c -> c.material().material()));
        return all;
    }

    /** The ladder of a panel that wants a barrier, or nothing. */
    Optional<Ladder> ladder() {
        if (!candidates.wanted().containsKey(Layer.BARRIER)) {
            return Optional.empty();
        }
        return Optional.of(new Ladder(rung(Rung.DECOUPLED_BARRIER), rung(Rung.BARRIER_LAID_DIRECT),
                rung(Rung.NO_BARRIER), limits.stack()));
    }

    private Optional<Scored> rung(Rung rung) {
        return Optional.ofNullable(bestOnRung.get(rung));
    }
}
