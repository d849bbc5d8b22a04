package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.PanelAccount;
import unthrum.effect.Patch;
import unthrum.facts.Bay;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;

/** Damping under a cover: on each bay that wants it, as long as the bay's part of the sheet is worth its weight. */
final class Dampers {

    /** A fitter halves a sheet. Common practice. */
    static final int PIECES = 2;

    private final Candidates candidates;
    private final PanelAccount account;
    private final Worth worth;
    private final double leastOfBay;
    private final Map<Sheet, Alone> alones = new HashMap<>();
    private final Map<Layup, PanelAccount.Under> unders = new IdentityHashMap<>();

    Dampers(Candidates candidates, PanelAccount account, Worth worth, Knowledge knowledge) {
        this.candidates = candidates;
        this.account = account;
        this.worth = worth;
        this.leastOfBay = knowledge.number("worth/panel");
    }

    private record Sheet(Material material, Patch patch) {
    }

    /** What a patch weighs and asks by itself, whatever covers it. */
    private record Alone(Bay bay, double mass, double trade, double cost, double burden) {
    }

    /** A sheet on the bays that are worth it. */
    record Damped(Laid laid, double gain, double trade, double worth) {
    }

    /** One bay's patch. */
    private record Treated(Patch patch, double gain, double trade, double worth, double unpaid, double mass) {
    }

    /**
     * The sheet on the bays where it is worth its weight, the worthiest first as far as the mass goes; nothing where it is
     * worth it nowhere.
     *
     * @param massLeft what the panel may still gain, kg
     */
    Optional<Damped> under(Layup cover, Laid sheet, double massLeft) {
        List<Treated> treated = new ArrayList<>();
        for (int i = 0; i < sheet.patches().size(); i++) {
            Treated next = treated(cover, sheet.material(), sheet.patches().get(i), i);
            if (next.worth > 0 && isTold(next, cover)) {
                treated.add(next);
            }
        }
        treated.sort(Comparator.comparingDouble((Treated t) -> -t.worth));
        double left = massLeft + 1e-9;
        List<Treated> laid = new ArrayList<>();
        for (Treated next : treated) {
            if (next.mass <= left) {
                left -= next.mass;
                laid.add(next);
            }
        }
        return laid.isEmpty() ? Optional.empty() : Optional.of(damped(sheet, laid));
    }

    /** The sheet on every bay that wants it, whether that is worth it or not. */
    Damped everywhere(Layup cover, Laid sheet) {
        return damped(sheet, IntStream.range(0, sheet.patches().size())
                .mapToObj(i -> treated(cover, sheet.material(), sheet.patches().get(i), i)).toList());
    }

    private static Damped damped(Laid sheet, List<Treated> treated) {
        List<Treated> laid = new ArrayList<>(treated);
        laid.sort(Comparator.comparing(t -> t.patch.place()));
        return new Damped(new Laid(sheet.material(), laid.stream().map(Treated::patch).toList()),
                laid.stream().mapToDouble(Treated::gain).sum(), laid.stream().mapToDouble(Treated::trade).sum(),
                laid.stream().mapToDouble(Treated::worth).sum());
    }

    /** A gain that takes hardly anything of what the bay gives off is lost in the error of the sums. */
    private boolean isTold(Treated treated, Layup cover) {
        Bay bay = candidates.bay(treated.patch.place());
        return treated.trade > 0 || treated.gain >= leastOfBay * under(cover).shaken(bay);
    }

    private Treated treated(Layup cover, Material material, Patch patch, int want) {
        Alone alone = alone(material, patch, want);
        double gain = gain(cover, material, alone.bay, patch.coverage());
        return new Treated(patch, gain, alone.trade, gain + alone.trade - alone.cost, gain + alone.trade - alone.burden,
                alone.mass);
    }

    private Alone alone(Material material, Patch patch, int want) {
        return alones.computeIfAbsent(new Sheet(material, patch), sheet -> {
            Bay bay = candidates.bay(patch.place());
            Laid laid = new Laid(material, List.of(patch));
            return new Alone(bay, laid.mass(), worth.trade(bay, candidates.wanted().get(Layer.DAMPING).get(want)),
                    worth.cost(laid), worth.burden(laid));
        });
    }

    private double gain(Layup cover, Material material, Bay bay, double coverage) {
        double gain = under(cover).damping(material, bay, coverage);
        return Double.isNaN(gain) ? 0 : gain;
    }

    /** What the trade's weights count on the bays that a sheet lies on. */
    double trade(Laid sheet) {
        double trade = 0;
        List<WeighedWant> wants = candidates.wanted().getOrDefault(Layer.DAMPING, List.of());
        for (Patch patch : sheet.patches()) {
            trade += wants.stream().filter(w -> w.place().equals(patch.place())).findFirst()
                    .map(w -> worth.trade(candidates.bay(patch.place()), w)).orElse(0.0);
        }
        return trade;
    }

    /** More than a sheet under the cover can be worth. */
    double most(Layup cover, Laid sheet) {
        double most = 0;
        for (int i = 0; i < sheet.patches().size(); i++) {
            Patch patch = sheet.patches().get(i);
            Alone alone = alone(sheet.material(), patch, i);
            double gain = under(cover).most(sheet.material(), alone.bay, patch.coverage());
            most += Math.max(0, (Double.isNaN(gain) ? 0 : gain) + alone.trade - alone.cost);
        }
        return most;
    }

    private PanelAccount.Under under(Layup cover) {
        return unders.computeIfAbsent(cover, account::under);
    }

    /** What each further piece of a sheet brings under a cover, bay by bay; bays on which it is worth nothing left out. */
    List<Options.Part> parts(Layup cover, Laid sheet) {
        List<Options.Part> parts = new ArrayList<>();
        for (int i = 0; i < sheet.patches().size(); i++) {
            Patch patch = sheet.patches().get(i);
            WeighedWant want = candidates.wanted().get(Layer.DAMPING).get(i);
            Treated whole = treated(cover, sheet.material(), patch, i);
            if (want.isForSafety() || whole.unpaid > 0 && isTold(whole, cover)) {
                parts.add(new Options.Part(patch, want.isForSafety(), pieces(cover, sheet.material(), patch, i)));
            }
        }
        return parts;
    }

    private List<Double> pieces(Layup cover, Material material, Patch patch, int want) {
        return IntStream.rangeClosed(1, PIECES).mapToObj(n -> {
            double part = (double) n / PIECES;
            return treated(cover, material, new Patch(patch.place(), patch.coverage() * part, patch.area() * part), want)
                    .unpaid;
        }).toList();
    }
}
