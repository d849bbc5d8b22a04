package unthrum.pieces;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import unthrum.cutting.Search;
import unthrum.cutting.Stock;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Material;
import unthrum.material.Material.Bonding;
import unthrum.plan.Plan;
import unthrum.plan.Purchase;
import unthrum.plan.Totals;

/**
 * Plans the cutting of a whole vehicle, material by material. First with the packs that the plan reckons with, joining
 * once more where that saves a pack; where they do not do, with as many as it takes if the client's money allows.
 */
public final class CutPlanner {

    /** Steps for one layout when no time is set: about a tenth of a second. */
    private static final long STEPS = 4000;
    /** So many layouts of one material share its time: of short stock several are tried. */
    private static final int TRIES = 4;

    private final Plan plan;
    private final Wishes wishes;
    private final Knowledge knowledge;
    private final Catalogue catalogue;
    /** The pieces of each material, in each way to part a face. */
    private final Map<Parting, Map<Material, List<CutPiece>>> pieces = new EnumMap<>(Parting.class);

    /** The way that leaves least out. */
    private final Map<Material, Parting> partings = new HashMap<>();

    private final Map<Material, Long> starts = new HashMap<>();

    private CutPlanner(Plan plan, Wishes wishes, Knowledge knowledge, Catalogue catalogue) {
        this.plan = plan;
        this.wishes = wishes;
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        for (Parting parting : Parting.values()) {
            pieces.put(parting, PieceMaker.of(plan, knowledge, parting).pieces().stream()
                    .collect(Collectors.groupingBy(CutPiece::material, LinkedHashMap::new, Collectors.toList())));
        }
    }

    public static CutPlan plan(Plan plan, Knowledge knowledge, Catalogue catalogue, Wishes wishes) {
        return new CutPlanner(plan, wishes, knowledge, catalogue).plan();
    }

    private CutPlan plan() {
        List<MaterialCut> cuts = new ArrayList<>();
        List<Shortfall> shortfalls = new ArrayList<>();
        usual().keySet().forEach(m -> cuts.add(asPlanned(m)));
        for (int i = 0; i < cuts.size(); i++) {
            if (!cuts.get(i).unplaced().isEmpty()) {
                cuts.set(i, more(cuts, i, shortfalls));
            }
        }
        List<OnSite> onSite = PieceMaker.of(plan, knowledge, Parting.FEWEST_PIECES).onSite();
        return new CutPlan(plan, wishes, cuts, onSite, shortfalls, supplies(cuts));
    }

    private Supplies supplies(List<MaterialCut> cuts) {
        List<CutPiece> cut = cuts.stream().flatMap(c -> c.pieces().stream()).toList();
        return new SupplyList(plan, knowledge, catalogue, cut).supplies();
    }

    private Map<Material, List<CutPiece>> usual() {
        return pieces.get(Parting.FEWEST_PIECES);
    }

    /** With the packs of the plan: parted as a fitter likes it, or in the way that leaves least out. */
    private MaterialCut asPlanned(Material material) {
        MaterialCut best = null;
        for (Parting parting : Parting.values()) {
            if (best == null || !best.unplaced().isEmpty()) {
                MaterialCut cut = cutter(material).cut(pieces.get(parting).get(material), planned(material));
                if (best == null || cut.unplacedArea() < best.unplacedArea() - 1e-6) {
                    best = cut;
                    partings.put(material, parting);
                }
            }
        }
        return best;
    }

    /** With as many packs as it takes, if there is money for them. */
    private MaterialCut more(List<MaterialCut> cuts, int index, List<Shortfall> shortfalls) {
        MaterialCut tight = cuts.get(index);
        Material material = tight.material();
        MaterialCut free = cutter(material).cut(usual().get(material), Stock.UNLIMITED);
        double extra = free.price() - tight.price();
        boolean affordable = extra <= moneyLeft(cuts);
        MaterialCut taken = affordable ? free : byRank(tight, free);
        Map<Boolean, List<CutPiece>> missing = taken.unplaced().stream()
                .collect(Collectors.partitioningBy(free.unplaced()::contains));
        missing.forEach((tooLarge, some) -> {
            if (!some.isEmpty()) {
                shortfalls.add(new Shortfall(material, some, tooLarge, tooLarge ? 0 : free.packs() - tight.packs(),
                        tooLarge ? 0 : extra));
            }
        });
        return taken;
    }

    /** As planned, with what finds no room chosen by the plan's ranking; what fits no sheet is left out anyway. */
    private MaterialCut byRank(MaterialCut tight, MaterialCut free) {
        Material material = tight.material();
        List<CutPiece> all = pieces.get(partings.get(material)).get(material);
        List<CutPiece> tooLarge = all.stream().filter(free.unplaced()::contains).toList();
        List<CutPiece> some = all.stream().filter(p -> !tooLarge.contains(p)).toList();
        return new ByRank(plan.shares().ranking(), cutter(material), some, planned(material)).cut(tight.without(tooLarge))
                .and(tooLarge);
    }

    /**
     * What the client's money leaves after all that is to be bought by now, tape among it; without a limit no end of
     * it.
     */
    private double moneyLeft(List<MaterialCut> cuts) {
        Totals totals = plan.totals();
        if (totals.moneyLimit().isEmpty() || !totals.moneyComparable()) {
            return Double.POSITIVE_INFINITY;
        }
        double closers = plan.shopping().stream().filter(p -> p.pieces() > 0).mapToDouble(Purchase::price).sum();
        return totals.moneyLimit().get().amount().doubleValue() - closers - supplies(cuts).price()
                - cuts.stream().mapToDouble(MaterialCut::price).sum();
    }

    /** The sheets or rolls in the packs that the plan reckons with. */
    private int planned(Material material) {
        return plan.shopping().stream().filter(p -> p.material().equals(material))
                .mapToInt(p -> p.packs() * material.inPack()).sum();
    }

    private MaterialCutter cutter(Material material) {
        double metres = wishes.gap().orElseGet(() -> material.bonding() == Bonding.FASTENED
                ? knowledge.number("cutting/saw-gap") : knowledge.number("cutting/knife-gap"));
        Search search = wishes.time().map(t -> Search.ofTime(wishes.seed(), share(t).dividedBy(TRIES)))
                .orElseGet(() -> Search.ofSteps(wishes.seed(), STEPS))
                .listener(p -> wishes.listener().accept(new Wishes.Progress(material.material(), p)))
                .cancelled(() -> wishes.cancelled().getAsBoolean() || isOver(material));
        return new MaterialCutter(OnHand.of(plan.survey(), material), wishes, (int) Math.round(metres * OnHand.TENTHS),
                search);
    }

    /** Whether a material has had its share of the time; it runs from its first layout on. */
    private boolean isOver(Material material) {
        long start = starts.computeIfAbsent(material, m -> System.nanoTime());
        return wishes.time().filter(t -> System.nanoTime() - start > share(t).toNanos()).isPresent();
    }

    private Duration share(Duration whole) {
        return whole.dividedBy(usual().size());
    }
}
