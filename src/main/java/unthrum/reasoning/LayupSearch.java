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
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reasoning.Candidate.Cover;
import unthrum.reasoning.engine.Judgement;

/**
 * The exact search over the catalogue: of all layups inside the limits the one that is worth most by the one account of
 * what it brings. Every admissible combination of covering layers is looked at, each with every damping sheet under it,
 * which lies on each bay where it is worth its weight. What cannot be the best by far is set aside, and looked at when
 * somebody asks what became of each material.
 *
 * <p>Among layups that nobody could tell apart by what they bring: the lightest, the cheapest, the thinnest, the fewest
 * materials, then by the materials' own figures ({@link unthrum.material.Figures}); a name never decides.
 */
final class LayupSearch {

    private final Candidates candidates;
    private final Limits limits;
    private final Worth worth;
    private final Dampers dampers;
    private final PanelAccount account;
    private final double alike;
    private final double alikePart;
    private final List<Layer> required;
    private final List<Cover> covers = new ArrayList<>();
    private final List<Candidate> all = new ArrayList<>();
    private final List<Aside> aside = new ArrayList<>();
    private final Map<Material, Candidate> bestWith = new IdentityHashMap<>();
    private final Map<Rung, Candidate> bestOnRung = new EnumMap<>(Rung.class);
    private final double leastOfPanel;
    private final double bare;
    private double leading;
    private final Scored best;

    /** The steps of the ladder, from the best treatment of an airborne source down. */
    enum Rung {
        DECOUPLED_BARRIER, BARRIER_LAID_DIRECT, NO_BARRIER;

        static Rung of(Cover cover) {
            return !cover.layup().has(Layer.BARRIER) ? NO_BARRIER
                    : cover.layup().has(Layer.DECOUPLER) ? DECOUPLED_BARRIER : BARRIER_LAID_DIRECT;
        }
    }

    /** A covering layer with its sums. */
    private record Part(Laid laid, double mass, double thickness, double trade, double cost, double burden) {
    }

    /** A cover and a sheet under it that cannot together be the best. */
    private record Aside(Cover cover, Laid sheet) {
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
        List<List<Part>> parts = candidates.wanted().keySet().stream().filter(l -> l != Layer.DAMPING)
                .map(l -> candidates.of(l).stream().map(this::part).toList()).toList();
        combine(parts, 0, new ArrayList<>(), 0, 0);
        this.leastOfPanel = knowledge.number("worth/panel");
        this.bare = account.bare();
        covers.sort(Comparator.comparingDouble(c -> -c.worth()));
        covers.forEach(this::dampen);
        this.best = choose();
    }

    private Part part(Laid laid) {
        double unloved = alike * candidates.unloved(laid.material());
        return new Part(laid, laid.mass(), laid.stackThickness(), worth.trade(laid), worth.cost(laid) + unloved,
                worth.burden(laid) + unloved);
    }

    /** Layers come in the order in which they lie; what a limit on the whole forbids, more layers do not mend. */
    private void combine(List<List<Part>> parts, int depth, List<Part> soFar, double thickness, double mass) {
        if (!limits.bear(thickness, mass)) {
            return;
        }
        if (depth == parts.size()) {
            Layup layup = new Layup(soFar.stream().map(Part::laid).toList());
            if (limits.pair(layup)) {
                covers.add(cover(layup, soFar, thickness, mass));
            }
            return;
        }
        combine(parts, depth + 1, soFar, thickness, mass);
        for (Part part : parts.get(depth)) {
            soFar.add(part);
            combine(parts, depth + 1, soFar, thickness + part.thickness, mass + part.mass);
            soFar.remove(soFar.size() - 1);
        }
    }

    private Cover cover(Layup layup, List<Part> parts, double thickness, double mass) {
        double trade = 0;
        double cost = 0;
        double burden = 0;
        for (Part part : parts) {
            trade += part.trade;
            cost += part.cost;
            burden += part.burden;
        }
        double gain = layup.isEmpty() ? 0 : account.cover(layup);
        return new Cover(layup, mass, thickness, gain, trade, gain + trade - cost, gain + trade - burden);
    }

    /** The cover bare of damping, and with each damping sheet that is worth it and may make it the best. */
    private void dampen(Cover cover) {
        judge(Candidate.of(cover, Optional.empty()));
        for (Laid sheet : candidates.of(Layer.DAMPING)) {
            if (limits.bear(cover.thickness() + sheet.stackThickness(), cover.mass())) {
                if (required.isEmpty() && cover.worth() + dampers.most(cover.layup(), sheet) + alike < leading) {
                    aside.add(new Aside(cover, sheet));
                } else {
                    damped(cover, sheet).ifPresent(this::judge);
                }
            }
        }
    }

    private Optional<Candidate> damped(Cover cover, Laid sheet) {
        return dampers.under(cover.layup(), sheet, limits.mass() - cover.mass())
                .filter(d -> limits.pair(Candidate.together(cover.layup(), d.laid())))
                .map(d -> Candidate.of(cover, Optional.of(d)));
    }

    private void judge(Candidate next) {
        all.add(next);
        if (next.worth() > leading && (next.isEmpty() || isWorthIt(next))) {
            leading = next.worth();
        }
    }

    /** The best with each material and on each rung, what was set aside among them; worked out when first asked for. */
    private void rankAll() {
        if (bestOnRung.isEmpty()) {
            all.forEach(this::rank);
            aside.stream().filter(a -> !isBeaten(a)).forEach(a -> damped(a.cover, a.sheet).ifPresent(c -> {
                all.add(c);
                rank(c);
            }));
            candidates.of(Layer.DAMPING).stream().filter(s -> !bestWith.containsKey(s.material()))
                    .forEach(this::unworthy);
        }
    }

    private void rank(Candidate next) {
        next.materials().forEach(m -> bestWith.merge(m, next, LayupSearch::better));
        bestOnRung.merge(Rung.of(next.cover()), next, LayupSearch::better);
    }

    /** Whether it can be the best neither with any of its materials nor on its rung. */
    private boolean isBeaten(Aside aside) {
        double most = aside.cover.worth() + dampers.most(aside.cover.layup(), aside.sheet);
        return bestOnRung.get(Rung.of(aside.cover)).worth() > most
                && Stream.concat(aside.cover.layup().materials().stream(), Stream.of(aside.sheet.material()))
                .allMatch(m -> bestWith.containsKey(m) && bestWith.get(m).worth() > most);
    }

    /** A sheet that is worth its weight on no bay: what it would gain all the same. */
    private void unworthy(Laid sheet) {
        Cover bare = covers.stream().filter(c -> c.layup().isEmpty()).findFirst().orElseThrow();
        Candidate next = Candidate.of(bare, Optional.of(dampers.everywhere(bare.layup(), sheet)));
        if (limits.bear(sheet.stackThickness(), next.mass()) && limits.pair(next.layup())) {
            bestWith.put(sheet.material(), next);
        }
    }

    private static Candidate better(Candidate a, Candidate b) {
        return a.worth() > b.worth() || a.worth() == b.worth() && Candidate.TIE.compare(a, b) <= 0 ? a : b;
    }

    /** Nothing where nothing is worth it; what safety asks for is laid as far as anything can be. */
    private Scored choose() {
        int most = all.stream().mapToInt(this::safe).max().orElse(0);
        List<Candidate> open = all.stream().filter(c -> safe(c) == most)
                .filter(c -> most > 0 || c.isEmpty() || isWorthIt(c)).toList();
        Candidate top = open.stream().min(Comparator.comparingDouble(c -> -c.worth())).orElseThrow();
        double enough = top.worth() - Math.min(alike, alikePart * Math.abs(top.worth()));
        return open.stream().filter(c -> c.worth() >= enough && c.isEmpty() == top.isEmpty()).min(Candidate.TIE)
                .orElseThrow().scored();
    }

    private int safe(Candidate candidate) {
        return (int) required.stream().filter(candidate::has).count();
    }

    private boolean isWorthIt(Candidate candidate) {
        return candidate.worth() > 0 && candidate.gain() >= -1e-12
                && (candidate.trade() > 0 || candidate.gain() >= leastOfPanel * bare);
    }

    /** The best layup; nothing when nothing is worth its weight. */
    Scored best() {
        return best;
    }

    /** Any layup of these materials, with its figures by the same account. */
    Scored scored(Layup layup) {
        if (layup.equals(best.layup())) {
            return best;
        }
        double gain = account.gain(layup);
        double trade = 0;
        double cost = 0;
        for (Laid laid : layup.layers()) {
            trade += laid.layer() == Layer.DAMPING ? dampers.trade(laid) : worth.trade(laid);
            cost += worth.cost(laid) + alike * candidates.unloved(laid.material());
        }
        return new Scored(layup, gain, trade, gain + trade - cost);
    }

    /** Where nothing is laid: the layup that would gain most, and how little that is. */
    Optional<Scored> slight() {
        if (!best.layup().isEmpty()) {
            return Optional.empty();
        }
        rankAll();
        return Stream.concat(all.stream(), bestWith.values().stream()).filter(c -> !c.isEmpty())
                .min(Comparator.comparingDouble((Candidate c) -> -c.gain()).thenComparing(Candidate.TIE))
                .map(Candidate::scored);
    }

    /** The materials of wanted layers that limits reject, with these limits. */
    Map<Material, List<Judgement>> rejected() {
        return candidates.rejected();
    }

    /** What may be laid here. */
    Options options() {
        return new Offers(covers, candidates, limits, dampers, required, best).options();
    }

    /** What became of each material of a wanted layer. */
    List<Considered> considered() {
        rankAll();
        List<Considered> fates = new ArrayList<>();
        candidates.rejected().forEach((material, by) -> fates.add(new Considered(material, by, Optional.empty(), false)));
        for (Laid laid : candidates.all()) {
            boolean chosen = best.layup().materials().contains(laid.material());
            fates.add(new Considered(laid.material(), List.of(),
                    Optional.ofNullable(bestWith.get(laid.material())).map(Candidate::scored), chosen));
        }
        fates.sort(Comparator.comparing((Considered c) -> c.material().layer()).thenComparing(c -> !c.chosen())
                .thenComparingDouble(c -> c.best().map(s -> -s.worth()).orElse(Double.POSITIVE_INFINITY))
                .thenComparing(c -> c.material().material()));
        return fates;
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
        rankAll();
        return Optional.ofNullable(bestOnRung.get(rung)).map(Candidate::scored);
    }
}
