package unthrum.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import unthrum.effect.Layup;
import unthrum.facts.Bay;
import unthrum.facts.Caution;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Hold;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.material.Material.Bonding;
import unthrum.derive.Assumed;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * What one panel gets, with the whole case for and against it.
 *
 * @param wants   every want weighed against the vetoes
 * @param found   what the search for a layup came to
 * @param options all that may be laid here; nothing on a held panel
 */
public record PanelAdvice(Verdict verdict, Layup layup, List<Closing> closings, Case panel, List<WeighedWant> wants,
                          Found found, Options options) {

    public String name() {
        return panel.panel();
    }

    /** The same case with another layup that the limits admit. */
    public PanelAdvice with(Layup other) {
        return new PanelAdvice(verdict.with(other), other, closings, panel, wants, found.laying(other), options);
    }

    /** Every material that could serve a standing want, and what became of it. */
    public List<Considered> considered() {
        return found.considered();
    }

    /** The steps down from the best that could be done against an airborne source; nothing where no barrier is wanted. */
    public Optional<Ladder> ladder() {
        return found.ladder();
    }

    /** The layup that is worth most as if money and mass were plenty, with its figures. */
    public Scored best() {
        return found.best();
    }

    /** What the panel gets, with its figures; on a held panel what it would get. */
    public Scored laid() {
        return found.laid();
    }

    /** Whether the whole job decided otherwise than the panel by itself. */
    public boolean isOfTheJob() {
        return !laid().layup().equals(best().layup());
    }

    /** Where nothing is laid though it may be: the layup that would gain most. */
    public Optional<Scored> slight() {
        return verdict == Verdict.HOLD ? Optional.empty() : found.slight();
    }

    /** The wants that the layup serves. */
    public List<WeighedWant> served() {
        return wants.stream().filter(WeighedWant::stands).filter(w -> layup.has(w.layer())
                || w.layer() == Layer.SEAL && verdict != Verdict.HOLD).toList();
    }

    /** The wants that stand, but that no layup inside the limits serves. */
    public List<WeighedWant> unserved() {
        return wants.stream().filter(WeighedWant::stands).filter(w -> w.layer() != Layer.SEAL)
                .filter(w -> !layup.has(w.layer())).toList();
    }

    /** The wants that a veto defeats. */
    public List<WeighedWant> outvoted() {
        return wants.stream().filter(w -> !w.stands()).toList();
    }

    /** The work to be done; what belongs only to a layer that is not laid falls away. */
    public List<Judgement> duties() {
        return duties(layup);
    }

    /** The work that belongs to the layers that are laid, to holes that are to be closed, and to the panel itself. */
    public List<Judgement> duties(Layup laid) {
        return duties(laid::has, laid.layers().stream()
                .anyMatch(l -> l.material().bonding() == Bonding.CONTACT_ADHESIVE));
    }

    /** @param glued whether contact adhesive holds one of the layers */
    public List<Judgement> duties(Predicate<Layer> laid, boolean glued) {
        return panel.own(Duty.class).stream().map(j -> new Judgement(j.conclusion(),
                applying(((Duty) j.conclusion()).work(), j.reasons(), laid, glued)))
                .filter(j -> !j.reasons().isEmpty()).toList();
    }

    private List<Reason> applying(Work work, List<Reason> reasons, Predicate<Layer> laid, boolean glued) {
        Predicate<Layer> comes = laid.or(l -> verdict == Verdict.HOLD || l == Layer.SEAL && !closings.isEmpty());
        return reasons.stream().filter(r -> isLaid(r, laid) && r.rule().serves(comes)
                && concerns(work, r.rule(), laid, glued)).toList();
    }

    /** Whether every layer that a reason speaks of is laid, or a hole that it wants closed is to be closed. */
    private boolean isLaid(Reason reason, Predicate<Layer> laid) {
        return reason.bindings().values().stream().filter(Want.class::isInstance).map(Want.class::cast)
                .allMatch(want -> laid.test(want.layer())
                        || closings.stream().anyMatch(c -> c.want().want().equals(want)));
    }

    /** Work that comes with a layer concerns a panel that gets it, or that may once the way is free. */
    private boolean concerns(Work work, RuleCard rule, Predicate<Layer> laid, boolean glued) {
        return verdict == Verdict.HOLD || rule.layer().map(laid::test).orElse(work != Work.USE_HOT_ADHESIVE || glued);
    }

    /**
     * What keeps a panel bare: what defeats or rejects a layer that something asks for; where nothing asks, that its
     * bays give damping nothing to do, or what keeps every layer away. Never what speaks against a layer that nobody
     * asked for.
     */
    public List<Judgement> keptBareBy() {
        Stream<Judgement> vetoes = outvoted().stream().flatMap(w -> w.vetoes().stream());
        Stream<Judgement> limits = unserved().stream().flatMap(w -> found.rejected().entrySet().stream()
                .filter(r -> r.getKey().layer() == w.layer())).flatMap(r -> r.getValue().stream());
        List<Judgement> decisive = Stream.concat(vetoes, limits).toList();
        return !decisive.isEmpty() ? decisive : panel.own(Veto.class).stream()
                .filter(j -> isOfAll((Veto) j.conclusion())).toList();
    }

    private boolean isOfAll(Veto veto) {
        boolean bay = panel.facts().all(Bay.class).anyMatch(b -> b.place().equals(veto.place()));
        return veto.layer() == Layer.ANY ? veto.place().isWholePanel()
                : veto.layer() == Layer.DAMPING && (veto.place().isWholePanel() || bay);
    }

    public List<Judgement> cautions() {
        return panel.own(Caution.class);
    }

    public List<Judgement> holds() {
        return panel.own(Hold.class);
    }

    /** What is to be measured; nothing where a danger keeps hands away from the whole panel. */
    public List<Judgement> questions() {
        return isHandsOff() ? List.of() : panel.own(Question.class);
    }

    /** Whether a danger keeps hands and layers away from the whole panel. */
    public boolean isHandsOff() {
        return panel.own(Veto.class).stream().anyMatch(j -> j.standing() == Standing.SAFETY
                && j.conclusion().place().isWholePanel() && ((Veto) j.conclusion()).layer() == Layer.ANY);
    }

    /** What was assumed and matters: the assumptions behind wants, vetoes, limits that reject, holds and questions. */
    public List<Assumed> restsOn() {
        Stream<Judgement> limits = found.rejected().values().stream().flatMap(List::stream);
        Stream<Judgement> reasons = Stream.of(wants.stream().flatMap(WeighedWant::judgements), limits,
                holds().stream(), questions().stream()).flatMap(s -> s);
        return panel.assumptionsBehind(reasons);
    }
}
