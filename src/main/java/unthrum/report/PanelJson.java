package unthrum.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import unthrum.effect.PanelEffect;
import unthrum.facts.Limit;
import unthrum.facts.Panel;
import unthrum.knowledge.RuleCard;
import unthrum.plan.LeftOut;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
import unthrum.reasoning.Closing;
import unthrum.reasoning.Considered;
import unthrum.reasoning.Ladder;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.reasoning.Overruled;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Scored;
import unthrum.effect.Patch;
import unthrum.reasoning.WeighedWant;
import unthrum.derive.Assumed;
import unthrum.reasoning.engine.Judgement;

/** One panel with its whole case as a JSON object; wants and candidates point into its list of conclusions. */
final class PanelJson {

    private final PlannedPanel planned;
    private final PanelEffect effect;
    private final PanelAdvice advice;
    private final List<Judgement> conclusions;
    private final Sentences sentences;

    PanelJson(PlannedPanel planned, PanelEffect effect) {
        this.planned = planned;
        this.effect = effect;
        this.advice = planned.advice();
        this.conclusions = advice.panel().judgements().stream().filter(j -> !j.conclusion().place().isVehicle()
                || j.conclusion() instanceof Limit).toList();
        this.sentences = new Sentences(PlaceNames.anywhere());
    }

    Map<String, Object> object() {
        Panel panel = advice.panel().facts().the(Panel.class);
        return Json.object("panel", planned.name(), "zone", Words.of(panel.zone()),
                "area", JsonValues.quantity(panel.area(), Dimension.AREA),
                "verdict", Words.of(planned.verdict()),
                "layup", layup(planned.layup()),
                "leftOut", planned.leftOut().stream().map(PanelJson::leftOut).toList(),
                "closings", advice.closings().stream().map(this::closing).toList(),
                "conclusions", conclusions.stream().map(j -> JsonValues.judgement(j, sentences)).toList(),
                "wants", advice.wants().stream().map(this::want).toList(),
                "work", PanelWork.of(planned).stream().map(this::index).distinct().toList(),
                "overrules", advice.panel().overruled().stream().map(this::overruled).toList(),
                "considered", advice.considered().stream().map(this::considered).toList(),
                "best", scored(advice.best()), "slight", advice.slight().map(PanelJson::scored),
                "ladder", advice.ladder().map(PanelJson::ladder),
                "restsOn", advice.restsOn().stream().map(Assumed::fact).toList(),
                "assumptions", advice.panel().facts().assumptions().values().stream().map(PanelJson::assumed).toList(),
                "effect", RecordJson.object(effect));
    }

    static Map<String, Object> layup(Layup layup) {
        return Json.object("thickness", JsonValues.quantity(layup.thickness(), Dimension.LENGTH),
                "mass", JsonValues.quantity(layup.mass(), Dimension.MASS),
                "layers", layup.layers().stream().map(PanelJson::laid).toList());
    }

    private static Map<String, Object> laid(Laid laid) {
        return Json.object("layer", laid.layer().word(), "material", laid.material().material(),
                "thickness", JsonValues.quantity(laid.material().thickness().si(), Dimension.LENGTH),
                "area", JsonValues.quantity(laid.area(), Dimension.AREA),
                "mass", JsonValues.quantity(laid.mass(), Dimension.MASS),
                "patches", laid.patches().stream().map(PanelJson::patch).toList());
    }

    private static Map<String, Object> patch(Patch patch) {
        return Json.object("place", JsonValues.place(patch.place()),
                "coverage", JsonValues.quantity(patch.coverage(), Dimension.SHARE),
                "area", JsonValues.quantity(patch.area(), Dimension.AREA));
    }

    static Map<String, Object> leftOut(LeftOut out) {
        return Json.object("material", out.material().material(), "patch", patch(out.patch()),
                "wanting", Words.of(out.why()));
    }

    private Map<String, Object> closing(Closing closing) {
        return Json.object("place", JsonValues.place(closing.want().place()), "count", closing.count(),
                "size", JsonValues.quantity(closing.opening().size(), Dimension.LENGTH),
                "piece", closing.piece().map(m -> m.material()));
    }

    private Map<String, Object> want(WeighedWant want) {
        return Json.object("conclusion", index(want.judgement()), "stands", want.stands(),
                "weight", Json.number(want.weight()), "served", advice.served().contains(want),
                "vetoes", want.vetoes().stream().map(this::index).toList());
    }

    private Map<String, Object> overruled(Overruled o) {
        return Json.object("rule", o.entry().rule(), "says", o.rule().map(RuleCard::name),
                "effect", Words.of(o.effect()), "why", o.entry().why(), "who", o.entry().who(),
                "when", o.entry().when().toString(),
                "against", o.against().stream().map(j -> JsonValues.judgement(j, sentences)).toList());
    }

    private Map<String, Object> considered(Considered considered) {
        return Json.object("material", considered.material().material(), "layer", considered.material().layer().word(),
                "chosen", considered.chosen(),
                "rejectedBy", considered.rejectedBy().stream().map(this::index).toList(),
                "bestLayup", considered.best().map(PanelJson::scored));
    }

    private static Map<String, Object> ladder(Ladder ladder) {
        OptionalDouble room = ladder.room();
        return Json.object("room", room.isPresent() ? JsonValues.quantity(room.getAsDouble(), Dimension.LENGTH) : null,
                "decoupledBarrier", ladder.decoupledBarrier().map(PanelJson::scored),
                "barrierLaidDirect", ladder.barrierLaidDirect().map(PanelJson::scored),
                "noBarrier", ladder.noBarrier().map(PanelJson::scored));
    }

    static Map<String, Object> scored(Scored scored) {
        return Json.object("layers", names(scored.layup()), "gain", JsonValues.quantity(scored.gain(), Dimension.SHARE),
                "trade", JsonValues.quantity(scored.trade(), Dimension.SHARE),
                "worth", JsonValues.quantity(scored.worth(), Dimension.SHARE));
    }

    static List<String> names(Layup layup) {
        return layup.layers().stream().map(l -> l.material().material()).toList();
    }

    private static Map<String, Object> assumed(Assumed assumed) {
        return Json.object("fact", assumed.fact(), "value", assumed.value(), "because", assumed.because(),
                "source", assumed.source());
    }

    /** Where a conclusion stands in the panel's list. */
    private int index(Judgement judgement) {
        for (int i = 0; i < conclusions.size(); i++) {
            if (conclusions.get(i).conclusion().equals(judgement.conclusion())) {
                return i;
            }
        }
        throw new IllegalStateException(judgement.conclusion() + " is not among the conclusions on " + planned.name());
    }
}
