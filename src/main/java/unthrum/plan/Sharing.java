package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import unthrum.facts.Bay;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Panel;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.LeftOut.Scarce;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reasoning.Closing;
import unthrum.reasoning.Laid;
import unthrum.reasoning.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Patch;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;

import unthrum.survey.StockEntry;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/**
 * Shares mass and money among the panels: the worst first. What brings least is left out, piece by piece, until the
 * whole fits; a heat shield is never left out.
 */
final class Sharing {

    private final Survey survey;
    private final Catalogue catalogue;

    Sharing(Survey survey, Catalogue catalogue) {
        this.survey = survey;
        this.catalogue = catalogue;
    }

    /** One piece that may be left out: a layer's patch with what it is worth. */
    private record Portion(PanelAdvice panel, Material material, Patch patch, double worth) {

        boolean onRoof() {
            return panel.panel().facts().the(Panel.class).zone() == Zone.ROOF;
        }

        double mass() {
            return patch.area() * material.surfaceDensity().si();
        }
    }

    Plan share(PanelFacts vehicle, List<Judgement> forAll, List<PanelAdvice> advice) {
        List<Portion> kept = new ArrayList<>();
        advice.forEach(panel -> kept.addAll(portions(panel)));
        kept.sort(Comparator.comparingDouble(Portion::worth));
        Map<Portion, Scarce> out = new LinkedHashMap<>();
        for (Optional<Scarce> scarce = scarce(kept, advice, forAll); scarce.isPresent(); scarce = scarce(kept, advice, forAll)) {
            Optional<Portion> least = least(kept, scarce.get());
            if (least.isEmpty()) {
                break;
            }
            out.putAll(removed(kept, least.get(), scarce.get()));
        }
        List<PlannedPanel> panels = advice.stream().map(a -> planned(a, out)).toList();
        return new Plan(survey, vehicle, forAll, panels, shopping(kept, advice), totals(kept, advice, forAll));
    }

    private static List<Portion> portions(PanelAdvice panel) {
        List<Portion> portions = new ArrayList<>();
        for (Laid laid : panel.layup().layers()) {
            for (Patch patch : laid.patches()) {
                portions.add(new Portion(panel, laid.material(), patch, worth(panel, laid.layer(), patch)));
            }
        }
        return portions;
    }

    /** The weight of the want it serves for each kg; among bays the strongest driven first. */
    private static double worth(PanelAdvice panel, Layer layer, Patch patch) {
        double weight = panel.wants().stream().filter(w -> w.layer() == layer && w.place().equals(patch.place()))
                .mapToDouble(WeighedWant::weight).max().orElse(0);
        double drive = panel.panel().facts().all(Bay.class).filter(b -> b.place().equals(patch.place()))
                .mapToDouble(Bay::drive).findFirst().orElse(1);
        return layer == Layer.HEAT_SHIELD ? Double.POSITIVE_INFINITY : weight * (1 + drive);
    }

    private static Optional<Portion> least(List<Portion> kept, Scarce scarce) {
        return kept.stream().filter(p -> Double.isFinite(p.worth()))
                .filter(p -> scarce != Scarce.ROOF_MASS || p.onRoof()).findFirst();
    }

    /** Takes a portion out, and with it what is useless without it: a decoupler or wear face without its barrier. */
    private static Map<Portion, Scarce> removed(List<Portion> kept, Portion least, Scarce why) {
        Map<Portion, Scarce> out = new LinkedHashMap<>();
        kept.remove(least);
        out.put(least, why);
        for (Portion other : List.copyOf(kept)) {
            boolean needs = other.panel() == least.panel() && least.panel().panel().all(Pairing.class)
                    .stream().map(j -> (Pairing) j.conclusion())
                    .anyMatch(p -> p.tie() == Pairing.Tie.NEEDS && p.layer() == other.material().layer()
                            && p.other() == least.material().layer());
            if (needs) {
                kept.remove(other);
                out.put(other, why);
            }
        }
        return out;
    }

    private Optional<Scarce> scarce(List<Portion> kept, List<PanelAdvice> advice, List<Judgement> forAll) {
        Totals totals = totals(kept, advice, forAll);
        if (exceeds(totals.roof(), totals.roofLimit())) {
            return Optional.of(Scarce.ROOF_MASS);
        }
        if (exceeds(totals.mass(), totals.massLimit())) {
            return Optional.of(Scarce.ADDED_MASS);
        }
        if (exceeds(totals.mass(), totals.payload())) {
            return Optional.of(Scarce.PAYLOAD);
        }
        boolean dear = totals.moneyComparable()
                && totals.moneyLimit().map(m -> totals.price() > m.amount().doubleValue() + 1e-9).orElse(false);
        return dear ? Optional.of(Scarce.MONEY) : Optional.empty();
    }

    private static boolean exceeds(double value, Optional<Quantity> limit) {
        return limit.map(l -> value > l.si() + 1e-9).orElse(false);
    }

    private Totals totals(List<Portion> kept, List<PanelAdvice> advice, List<Judgement> forAll) {
        double price = shopping(kept, advice).stream().mapToDouble(Purchase::price).sum();
        return new Totals(kept.stream().mapToDouble(Portion::mass).sum(),
                kept.stream().filter(Portion::onRoof).mapToDouble(Portion::mass).sum(), price,
                catalogue.all().get(0).price().currency(), survey.limits().flatMap(unthrum.survey.Limits::addedMass),
                survey.limits().flatMap(unthrum.survey.Limits::roofMass), survey.limits().flatMap(unthrum.survey.Limits::money),
                payload(forAll));
    }

    /** What the rules leave of the payload for the whole job. */
    private static Optional<Quantity> payload(List<Judgement> forAll) {
        return forAll.stream().map(Judgement::conclusion)
                .filter(c -> c instanceof Limit limit && limit.bound() == Limit.Bound.MASS)
                .map(c -> new Quantity(((Limit) c).value(), Dimension.MASS))
                .min(Comparator.comparingDouble(Quantity::si));
    }

    private List<Purchase> shopping(List<Portion> kept, List<PanelAdvice> advice) {
        Map<String, Double> areas = new TreeMap<>();
        Map<String, Integer> pieces = new TreeMap<>();
        kept.forEach(p -> areas.merge(p.material().material(), p.patch().area(), Double::sum));
        advice.stream().flatMap(a -> a.closings().stream()).filter(c -> c.piece().isPresent())
                .forEach(c -> pieces.merge(c.piece().get().material(), c.count(), Integer::sum));
        List<Purchase> purchases = new ArrayList<>();
        areas.forEach((name, area) -> purchases.add(byArea(catalogue.find(name).orElseThrow(), area)));
        pieces.forEach((name, count) -> purchases.add(byPiece(catalogue.find(name).orElseThrow(), count)));
        return purchases;
    }

    private Purchase byArea(Material material, double area) {
        double sheet = material.packArea() / material.inPack();
        double shelf = 0;
        for (StockEntry entry : survey.stock().orElse(List.of())) {
            if (entry.material().equals(material.material())) {
                shelf += entry.sheets().map(n -> n * sheet).orElse(0.0)
                        + entry.length().map(l -> l.si() * material.size().get(0).si()).orElse(0.0);
            }
        }
        double used = Math.min(shelf, area);
        return new Purchase(material, area, 0, used, (int) Math.ceil((area - used) / material.packArea() - 1e-9));
    }

    private static Purchase byPiece(Material material, int count) {
        return new Purchase(material, 0, count, 0, (count + material.inPack() - 1) / material.inPack());
    }

    private static PlannedPanel planned(PanelAdvice advice, Map<Portion, Scarce> out) {
        List<LeftOut> leftOut = new ArrayList<>();
        List<Laid> layers = new ArrayList<>();
        for (Laid laid : advice.layup().layers()) {
            List<Patch> patches = new ArrayList<>();
            for (Patch patch : laid.patches()) {
                Optional<Scarce> why = out.entrySet().stream().filter(e -> e.getKey().panel() == advice
                        && e.getKey().material().equals(laid.material()) && e.getKey().patch().equals(patch))
                        .map(Map.Entry::getValue).findFirst();
                why.ifPresentOrElse(w -> leftOut.add(new LeftOut(laid.material(), patch, w)), () -> patches.add(patch));
            }
            if (!patches.isEmpty()) {
                layers.add(new Laid(laid.material(), patches));
            }
        }
        return new PlannedPanel(advice, new Layup(layers), leftOut);
    }
}
