package unthrum.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.knowledge.Knowledge;
import unthrum.reading.YamlReader;
import unthrum.survey.Zone;

/** The trade's order of work: areas from the top down, kinds of step, and what comes before what. */
public record StepTable(List<Area> areas, List<StepKind> steps, List<OrderRule> order, List<Apart> apart) {

    private static final String SHIPPED = "rules/steps.yaml";

    /** The table in the jar. */
    public static StepTable load(Knowledge knowledge) {
        return YamlReader.read(SHIPPED, StepTable.class.getClassLoader().getResourceAsStream("unthrum/" + SHIPPED),
                StepTable.class, (table, places) -> new StepTableCheck(table, knowledge, places).all());
    }

    /** A shop's own table; a mistake in it, a circle among them, is a problem of the file. */
    public static StepTable read(Path file, Knowledge knowledge) {
        return YamlReader.read(file, StepTable.class,
                (table, places) -> new StepTableCheck(table, knowledge, places).all());
    }

    Area area(Zone zone) {
        return areas.stream().filter(a -> a.zones().contains(zone)).findFirst()
                .orElseThrow(() -> new IllegalStateException("no area holds the zone " + zone));
    }

    /** Where a step stands: its kind and, where that is done area by area, its area. */
    record Spot(StepKind kind, Optional<Area> area) {
        String name() {
            return kind.step() + area.map(a -> ", " + a.area()).orElse("");
        }
    }

    /** Every place that a step may take on any vehicle, in the order of the table. */
    List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (StepKind kind : steps) {
            if (kind.stage().isByArea()) {
                areas.stream().filter(kind::isDoneIn).forEach(a -> spots.add(new Spot(kind, Optional.of(a))));
            } else {
                spots.add(new Spot(kind, Optional.empty()));
            }
        }
        return spots;
    }

    /** What the order asks for among the given places. */
    List<Edge> edges(List<Spot> spots) {
        List<Edge> edges = new ArrayList<>();
        for (OrderRule rule : order) {
            for (int i = 0; i < spots.size(); i++) {
                for (int j = 0; j < spots.size(); j++) {
                    if (i != j && holds(rule, spots.get(i), spots.get(j))) {
                        edges.add(new Edge(i, j, rule));
                    }
                }
            }
        }
        return edges;
    }

    private boolean holds(OrderRule rule, Spot first, Spot second) {
        if (!rule.ties(first.kind(), second.kind())) {
            return false;
        }
        boolean somewhere = first.area().isEmpty() || second.area().isEmpty();
        return somewhere || rule.where().holds(areas.indexOf(first.area().get()), areas.indexOf(second.area().get()),
                second.area().get().isWalkedOn());
    }

    /** The area on top of all others. */
    boolean isOverhead(Area area) {
        return area.equals(areas.get(0));
    }

    boolean keepsApart(StepKind one, StepKind other) {
        return apart.stream().anyMatch(a -> a.keeps(one, other));
    }
}
