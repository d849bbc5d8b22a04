package unthrum.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import unthrum.material.Layer;
import unthrum.plan.PanelWork;
import unthrum.plan.Plan;
import unthrum.reasoning.engine.Judgement;

/** What must hold on every job card, worked out from the plan and the table without the program's own ordering. */
final class CardChecks {

    private CardChecks() {
    }

    /** Pairs of steps that stand in the wrong order by a rule of the table. */
    static List<String> outOfOrder(JobCard card) {
        List<String> faults = new ArrayList<>();
        for (OrderRule rule : card.table().order()) {
            for (int i = 0; i < card.steps().size(); i++) {
                for (int j = 0; j < i; j++) {
                    if (comesFirst(rule, card.steps().get(i), card.steps().get(j), card.table())) {
                        faults.add(rule.order() + ": " + card.steps().get(i).name() + " after " + card.steps().get(j).name());
                    }
                }
            }
        }
        return faults;
    }

    private static boolean comesFirst(OrderRule rule, Step first, Step second, StepTable table) {
        boolean before = rule.before().map(names -> names.contains(first.kind().step()))
                .orElse(!rule.then().contains(first.kind().step()));
        boolean named = before && rule.then().contains(second.kind().step());
        if (!named || first.area().isEmpty() || second.area().isEmpty()) {
            return named && (rule.where() != OrderRule.Where.SAME_STEP_IN_LOWER_AREAS);
        }
        int above = table.areas().indexOf(first.area().get());
        int below = table.areas().indexOf(second.area().get());
        return switch (rule.where()) {
            case EVERYWHERE -> true;
            case SAME_AREA -> above == below;
            case LOWER_AREAS -> above < below;
            case SAME_STEP_IN_LOWER_AREAS -> above < below && first.kind().equals(second.kind());
            case UNDERFOOT -> above != below && second.isUnderfoot();
        };
    }

    /** Steps done inside that come after a layer on the floor: somebody stands on it. A shield hangs below the floor. */
    static List<String> onFinishedWork(JobCard card) {
        List<String> faults = new ArrayList<>();
        for (int floor = 0; floor < card.steps().size(); floor++) {
            Step laid = card.steps().get(floor);
            for (int i = 0; i < card.steps().size(); i++) {
                Step step = card.steps().get(i);
                boolean stands = step.kind().isDoneInside() && !step.isUnderfoot() && laid.kind().isDoneInside();
                if (laid.isUnderfoot() && laid.kind().lays() && stands && !card.waitsFor().get(floor).get(i)) {
                    faults.add(step.name() + " stands on " + laid.name());
                }
            }
        }
        return faults;
    }

    /** How often each reason of each duty on a panel is met, by panel, part, work and rule. */
    static Map<String, Integer> met(JobCard card) {
        Map<String, Integer> met = new TreeMap<>();
        card.steps().stream().flatMap(s -> s.asks().stream()).filter(a -> !a.conclusion().place().isVehicle())
                .forEach(a -> keys(a).forEach(k -> met.merge(k, 1, Integer::sum)));
        return met;
    }

    /** Each reason of each duty on a panel once. */
    static Map<String, Integer> asked(Plan plan) {
        Map<String, Integer> asked = new TreeMap<>();
        plan.panels().stream().flatMap(p -> PanelWork.of(p).stream()).flatMap(CardChecks::keys)
                .forEach(k -> asked.merge(k, 1, Integer::sum));
        return asked;
    }

    private static Stream<String> keys(Judgement duty) {
        return duty.reasons().stream().map(r -> duty.conclusion().place() + ": " + PanelWork.work(duty) + " by "
                + r.rule().id() + r.bindings().values().stream().filter(unthrum.facts.Fact.class::isInstance)
                .map(f -> " " + ((unthrum.facts.Fact) f).place()).toList());
    }

    /** The layers that the plan lays, each on its panel. */
    static List<String> planned(Plan plan) {
        return plan.panels().stream().flatMap(p -> p.layup().layers().stream().map(l -> p.name() + ": " + l)).sorted().toList();
    }

    /** The layers that the steps lay. */
    static List<String> laid(JobCard card) {
        return card.steps().stream().flatMap(s -> s.tasks().stream()).flatMap(t -> t.layers().stream()
                .map(l -> t.panel() + ": " + l)).sorted().toList();
    }

    /** On one panel layers come from the metal inward; a shield hangs on the other side, and comes first. */
    static List<String> layersOutOfOrder(JobCard card) {
        List<String> faults = new ArrayList<>();
        for (var panel : card.plan().panels()) {
            List<Layer> order = card.steps().stream().flatMap(s -> s.tasks().stream())
                    .filter(t -> t.panel().equals(panel.name())).flatMap(t -> t.layers().stream()).map(l -> l.layer()).toList();
            if (!order.equals(order.stream().sorted().toList())) {
                faults.add(panel.name() + ": " + order);
            }
        }
        return faults;
    }

    /** What a card says, step by step, whatever order the survey lists its panels in. */
    static List<String> said(JobCard card) {
        return IntStream.range(0, card.steps().size()).mapToObj(i -> card.steps().get(i)).map(s -> s.name() + " "
                + s.tasks().stream().map(t -> t.panel() + t.layers() + t.parts().stream().sorted().toList()).sorted().toList()
                + s.rules() + s.people()).toList();
    }
}
