package unthrum.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.audit.Audit;
import unthrum.audit.Audit.AuditedPanel;
import unthrum.built.BuiltPanel;
import unthrum.facts.Behind;
import unthrum.facts.Caution;
import unthrum.facts.Caution.Danger;
import unthrum.facts.Fixing;
import unthrum.facts.Opening;
import unthrum.facts.ServiceCover;
import unthrum.material.Layer;
import unthrum.material.Material.Cell;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.FixingKind;

/** A finished job told to its owner, who knows the vehicle and not the trade. */
final class OwnerWords {
    private static final Set<FixingKind> UNBOLTED = Set.of(FixingKind.SEAT_BOLT, FixingKind.BELT_ANCHOR,
            FixingKind.CHILD_SEAT_ANCHOR, FixingKind.BRACKET, FixingKind.THREADED_INSERT, FixingKind.CONSOLE_STUD);

    private final Audit audit;
    private final Map<String, Layup> fitted;

    OwnerWords(Audit audit) {
        this.audit = audit;
        this.fitted = audit.panels().stream().collect(Collectors.toMap(AuditedPanel::name, AuditedPanel::fitted));
    }

    List<String> done() {
        Map<String, List<String>> panels = new LinkedHashMap<>();
        treated().forEach(p -> panels.computeIfAbsent(English.and(layup(p).layers().stream().map(OwnerWords::layer)
                .distinct().toList()), l -> new ArrayList<>()).add(p.name()));
        return panels.entrySet().stream().map(e -> English.sentence(English.capital(English.and(e.getValue())) + ": "
                + e.getKey())).toList();
    }

    /** What a layer is for, with its material. */
    static String layer(Laid laid) {
        return purpose(laid.layer()) + " (" + laid.material().material() + ")";
    }

    static String purpose(Layer layer) {
        return switch (layer) {
            case DAMPING -> "damping against ringing";
            case DECOUPLER -> "soft foam as a cushion";
            case BARRIER -> "a heavy sheet against noise from outside";
            case INSULATION -> "a layer against heat and cold";
            case ABSORBER -> "a layer that swallows sound";
            case WEAR_FACE -> "a face to walk and load on";
            case HEAT_SHIELD -> "a heat shield";
            case SEAL, ANY -> layer.word();
        };
    }

    private static String purposes(Layup layup) {
        return English.and(layup.layers().stream().map(l -> purpose(l.layer())).distinct().toList());
    }

    /** Panels that need nothing stand together; the others each with the first reason. */
    List<String> left() {
        List<String> lines = new ArrayList<>();
        List<String> quiet = new ArrayList<>();
        untreated().forEach(p -> reason(p).ifPresentOrElse(why -> lines.add(English.sentence(English.capital(p.name())
                + ": " + why)), () -> quiet.add(p.name())));
        if (!quiet.isEmpty()) {
            lines.add("Nothing was needed on " + English.and(quiet) + ".");
        }
        List<String> unknown = audit.plan().panels().stream().filter(p -> !isRecorded(p)).map(PlannedPanel::name).toList();
        if (!unknown.isEmpty()) {
            lines.add("Nobody has written down what lies on " + English.and(unknown) + ", or that nothing does.");
        }
        return lines;
    }

    private static Optional<String> reason(PlannedPanel p) {
        Sentences sentences = new Sentences(PlaceNames.on(p.advice().panel().facts()));
        Stream<Judgement> against = Stream.concat(p.advice().holds().stream(),
                p.advice().outvoted().stream().map(WeighedWant::vetoes).flatMap(List::stream));
        Optional<String> said = against.map(j -> j.restsOnAssumption()
                ? "not everything there was measured, so it stayed bare to be safe"
                : sentences.because(j.reasons().get(0))).findFirst();
        if (said.isPresent()) {
            return said;
        }
        if (!p.layup().isEmpty()) {
            return Optional.of(purposes(p.layup()) + " was planned there, and is not there");
        }
        boolean wanted = p.advice().wants().stream().anyMatch(w -> w.stands() && w.layer() != Layer.SEAL);
        return wanted ? Optional.of(p.leftOut().isEmpty()
                ? "it would have gained, but nothing that would help fits there"
                : "it would have gained, but other panels needed the weight and the money more")
                : Optional.empty();
    }

    List<String> drilling() {
        List<String> lines = new ArrayList<>();
        Map<String, List<String>> hazards = new LinkedHashMap<>();
        List<String> unknown = new ArrayList<>();
        for (PlannedPanel p : audit.plan().panels()) {
            p.advice().panel().facts().all(Behind.class).forEach(b -> hazards
                    .computeIfAbsent(Words.of(b.hazard()), h -> new ArrayList<>()).add(p.name()));
            if (p.advice().panel().facts().assumptions().containsKey("behind")) {
                unknown.add(p.name());
            }
        }
        hazards.forEach((hazard, panels) -> lines.add(English.sentence("Do not drill or screw into "
                + English.and(panels) + ": " + English.withArticle(hazard) + " lies on, in or behind "
                + (panels.size() == 1 ? "it" : "each"))));
        if (!unknown.isEmpty()) {
            lines.add("Nobody has written down what lies behind " + English.and(unknown) + ": look before you drill.");
        }
        List<String> bolts = treated().flatMap(p -> p.advice().panel().facts().all(Fixing.class))
                .filter(f -> UNBOLTED.contains(f.kind()))
                .filter(f -> audit.findings().stream().noneMatch(x -> x.place().equals(f.place())))
                .map(f -> new Sentences(PlaceNames.anywhere()).place(f.place())).toList();
        if (!bolts.isEmpty()) {
            lines.add("May be unbolted as before, metal to metal and to the maker's torque: " + English.and(bolts) + ".");
        }
        lines.add("Everywhere else, look at the other side first, and keep the photographs of the bare metal at hand.");
        return lines;
    }

    List<String> service() {
        List<String> lines = new ArrayList<>();
        Map<String, List<String>> open = new LinkedHashMap<>();
        for (PlannedPanel p : audit.plan().panels()) {
            p.advice().panel().facts().all(ServiceCover.class).forEach(c -> lines.add(English.sentence(
                    English.capital(Words.of(c.kind())) + " on " + p.name() + ": " + over(p))));
            p.advice().panel().facts().all(Opening.class).filter(Opening::staysOpen).map(o -> Words.of(o.kind()))
                    .distinct().forEach(kind -> open.computeIfAbsent(kind, k -> new ArrayList<>()).add(p.name()));
        }
        open.forEach((kind, panels) -> lines.add(English.sentence("Never close or cover a " + kind + "; there are some on "
                + English.and(panels))));
        return lines;
    }

    private String over(PlannedPanel panel) {
        if (!isRecorded(panel)) {
            return "nobody has written down what lies over it";
        }
        return layup(panel).isEmpty() ? "nothing lies over it" : "the layers are cut along its edge";
    }

    List<String> care() {
        Map<Danger, List<String>> dangers = new EnumMap<>(Danger.class);
        audit.plan().cautions().forEach(j -> dangers.put(((Caution) j.conclusion()).danger(), new ArrayList<>()));
        for (PlannedPanel p : audit.plan().panels()) {
            p.advice().cautions().forEach(j -> dangers.computeIfAbsent(((Caution) j.conclusion()).danger(),
                    d -> new ArrayList<>()).add(p.name()));
        }
        List<String> lines = new ArrayList<>();
        dangers.forEach((danger, panels) -> OwnerDangers.of(danger).ifPresent(says -> lines.add(says
                + (panels.isEmpty() ? "" : " Here: " + English.and(panels.stream().distinct().toList()) + "."))));
        lines.add("Local vehicle rules decide on added weight, seats and belts. This sheet replaces neither them nor"
                + " qualified people.");
        return lines;
    }

    /** Common practice, no source. */
    List<String> cleaning() {
        List<Laid> laid = fitted.values().stream().flatMap(l -> l.layers().stream()).toList();
        List<String> lines = new ArrayList<>();
        if (laid.stream().anyMatch(l -> l.layer() == Layer.WEAR_FACE)) {
            lines.add("Sweep or vacuum the faces that are walked on, then a damp cloth with mild soap.");
        }
        if (laid.stream().anyMatch(l -> l.material().cell() == Cell.OPEN || l.material().cell() == Cell.FIBRE)) {
            lines.add("Open foam, felt and fibre lie under the trim: never hose the inside, and dry a spill at once.");
        }
        if (laid.stream().anyMatch(l -> l.material().bonding().sticks())) {
            lines.add("No solvent and no steam on edges of layers: both loosen what was stuck.");
        }
        return lines;
    }

    private Stream<PlannedPanel> treated() {
        return audit.plan().panels().stream().filter(p -> !layup(p).isEmpty());
    }

    private Stream<PlannedPanel> untreated() {
        return audit.plan().panels().stream().filter(p -> isRecorded(p) && layup(p).isEmpty());
    }

    /** Whether the as-built file says what lies there, if only 'none'. */
    private boolean isRecorded(PlannedPanel panel) {
        return audit.built().panel(panel.name()).flatMap(BuiltPanel::layers).isPresent();
    }

    private Layup layup(PlannedPanel panel) {
        return fitted.get(panel.name());
    }
}
