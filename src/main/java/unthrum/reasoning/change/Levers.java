package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import unthrum.facts.Bay;
import unthrum.knowledge.Knowledge;
import unthrum.reading.RecordPath;
import unthrum.reading.Words;
import unthrum.derive.PanelFacts;
import unthrum.survey.Curve;
import unthrum.survey.Drive;
import unthrum.survey.HeatSource;
import unthrum.survey.PanelEntry;
import unthrum.survey.Reach;
import unthrum.survey.Tap;

/** Finds the facts of one panel that can be turned. */
final class Levers {

    /** Where facts stand that every panel has one of. */
    private static final Map<String, String> SINGLE = Map.ofEntries(Map.entry("metal", "skin.metal"),
            Map.entry("gauge", "skin.gauge"), Map.entry("shape", "shape.curve"), Map.entry("rise", "shape.rise"),
            Map.entry("heat from", "heat.from"), Map.entry("peak", "heat.peak"),
            Map.entry("paint", "surface.paint"), Map.entry("dirt", "surface.dirt"),
            Map.entry("rust", "surface.rust"), Map.entry("old", "surface.old"), Map.entry("lid margin", "lid.margin"));
    private static final List<String> PLAIN = List.of("metal", "gauge", "shape", "clearance", "clearance to",
            "lining on ribs", "heat from", "reach", "lifts out", "wet", "dries out", "traffic", "near ear",
            "near noise", "paint", "dirt", "rust", "old");
    static final List<String> LISTS =
            List.of("openings", "fixings", "moving", "covers", "behind", "missing", "loose");

    private final Knowledge knowledge;
    private final PanelEntry panel;
    private final PanelFacts facts;
    private final Drive drive;
    private final List<Lever> levers = new ArrayList<>();

    private Levers(Knowledge knowledge, Drive drive, PanelEntry panel, PanelFacts facts) {
        this.knowledge = knowledge;
        this.panel = panel;
        this.facts = facts;
        this.drive = drive;
    }

    /**
     * @param drive the vehicle's drive: without an engine nothing burns
     * @param facts what was derived from the panel
     */
    static List<Lever> of(Knowledge knowledge, Drive drive, PanelEntry panel, PanelFacts facts) {
        Levers all = new Levers(knowledge, drive, panel, facts);
        PLAIN.forEach(key -> all.add(key, key, 0, SINGLE.getOrDefault(key, key)));
        all.dependent();
        all.taps();
        all.parts("opening", panel.openings().map(List::size).orElse(0), "openings", List.of("size", "state", "must stay open"));
        all.parts("fixing", panel.fixings().map(List::size).orElse(0), "fixings", List.of("size"));
        all.parts("rib", panel.ribs().map(List::size).orElse(0), "ribs", List.of("width"));
        LISTS.forEach(all::list);
        return List.copyOf(all.levers);
    }

    /** Facts that say something only where another one has a certain value. */
    private void dependent() {
        if (facts.the(unthrum.facts.Panel.class).curve() != Curve.FLAT
                && panel.shape().flatMap(PanelEntry.Shape::radius).isEmpty()
                && panel.shape().flatMap(PanelEntry.Shape::riseAlong).isEmpty()) {
            add("rise", "rise", 0, SINGLE.get("rise"));
        }
        if (facts.the(unthrum.facts.Heat.class).from() != HeatSource.NONE) {
            add("peak", "peak", 0, SINGLE.get("peak"));
        }
        if (facts.the(unthrum.facts.Access.class).reach() == Reach.PART) {
            add("reachable", "reachable", 0, "reachable");
        }
        if (panel.lid().isPresent()) {
            add("lid margin", "lid margin", 0, SINGLE.get("lid margin"));
        }
    }

    private void taps() {
        List<Bay> bays = facts.all(Bay.class).toList();
        for (Bay bay : bays) {
            int index = bay.number() - 1;
            Tap today = bay.tap();
            RecordPath path = RecordPath.of(PanelEntry.class, "tap[" + index + "]");
            BiFunction<PanelEntry, Object, PanelEntry> set = (entry, value) ->
                    path.with(RecordPath.of(PanelEntry.class, "tap").with(entry, taps(bays)), value);
            String name = bays.size() == 1 ? "tap" : "tap " + bay.number();
            levers.add(new Lever(name, "tap", bays.size() == 1 ? 0 : bay.number(), path, Optional.of(today),
                    panel.tap().isPresent() && today != Tap.NOT_TAPPED,
                    others(List.of(Tap.RINGS, Tap.DULL, Tap.DEAD), today), knowledge.measuring("tap"), set));
        }
    }

    private static List<Tap> taps(List<Bay> bays) {
        return bays.stream().map(Bay::tap).toList();
    }

    private void parts(String part, int count, String list, List<String> keys) {
        for (int i = 0; i < count; i++) {
            for (String key : keys) {
                String fact = key.equals("must stay open") ? key : part + " " + key;
                add(count == 1 ? fact : fact + " " + (i + 1), fact, count == 1 ? 0 : i + 1, list + "[" + i + "]." + key);
            }
        }
    }

    private void add(String name, String fact, int number, String text) {
        RecordPath path = RecordPath.of(PanelEntry.class, text);
        Optional<Object> stated = path.in(panel);
        Object today = stated.orElseGet(() -> assumed(path, fact));
        List<Object> words = knowledge.measuring(fact).isScale() ? List.of() : others(values(path), today).stream()
                .filter(v -> !(v instanceof HeatSource source) || isReckonedWith(source)).toList();
        levers.add(new Lever(name, fact, number, path, Optional.of(today), stated.isPresent(), words,
                knowledge.measuring(fact), (entry, value) -> settled(path.with(prepared(entry, text), value), value)));
    }

    /** What was said of the fact as it was falls away with it: the peak of a heat that is gone, the rise of a bow. */
    private static PanelEntry settled(PanelEntry entry, Object value) {
        if (value == HeatSource.NONE) {
            return with(entry, "heat.peak", null);
        }
        if (value == Curve.FLAT) {
            return Stream.of("rise", "radius", "rise along", "rise across", "far rise").reduce(entry,
                    (e, key) -> with(e, "shape." + key, null), (a, b) -> b);
        }
        if (value instanceof Reach reach && reach != Reach.PART) {
            PanelEntry whole = with(entry, "reachable", null);
            return reach == Reach.OPEN ? with(whole, "in the way", null) : whole;
        }
        return entry;
    }

    private Object assumed(RecordPath path, String fact) {
        if (fact.equals("peak") && facts.the(unthrum.facts.Heat.class).from() == HeatSource.NONE) {
            return HeatSource.NONE;
        }
        return path.read("assumptions", knowledge.assumption(fact, panel.zone()).orElseThrow().value());
    }

    private boolean isReckonedWith(Enum<?> part) {
        boolean burns = part == HeatSource.EXHAUST || part == HeatSource.TURBO || part == HeatSource.CATALYST;
        return knowledge.isReckonedWith(Words.of(part), panel.zone()) && !(burns && drive == Drive.ELECTRIC);
    }

    private static List<Object> values(RecordPath path) {
        return path.words().map(words -> Arrays.<Object>asList(words.getEnumConstants()))
                .orElse(List.of(true, false));
    }

    private static List<Object> others(List<?> all, Object today) {
        return all.stream().filter(v -> !v.equals(today)).<Object>map(v -> v).toList();
    }

    /** The panel with the block around a value, its required word taken from what holds today. */
    private PanelEntry prepared(PanelEntry entry, String text) {
        UnaryOperator<PanelEntry> open = switch (text.indexOf('.') < 0 ? text : text.substring(0, text.indexOf('.'))) {
            case "skin" -> e -> e.skin().isPresent() ? e : with(e, "skin", new PanelEntry.Skin(
                    facts.the(unthrum.facts.Panel.class).metal(), Optional.empty()));
            case "shape" -> e -> e.shape().isPresent() ? e : with(e, "shape", new PanelEntry.Shape(
                    facts.the(unthrum.facts.Panel.class).curve(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty()));
            case "heat" -> e -> e.heat().isPresent() ? e : with(e, "heat", new PanelEntry.Heat(
                    facts.the(unthrum.facts.Heat.class).from(), Optional.empty()));
            case "surface" -> e -> e.surface().isPresent() ? e : with(e, "surface", new PanelEntry.SurfaceEntry(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
            default -> UnaryOperator.identity();
        };
        return open.apply(entry);
    }

    private static PanelEntry with(PanelEntry entry, String path, Object value) {
        return RecordPath.of(PanelEntry.class, path).with(entry, value);
    }

    /** A list: nothing, or one of each kind where nobody wrote it; without one of its entries where somebody did. */
    private void list(String key) {
        RecordPath path = RecordPath.of(PanelEntry.class, key);
        Optional<Object> stated = path.in(panel);
        List<Object> values = stated.map(list -> without((List<?>) list)).orElseGet(() -> Single.of(key, this::isReckonedWith));
        levers.add(new Lever(key, key, 0, path, stated, stated.isPresent(), values, knowledge.measuring(key),
                path::with));
    }

    private static List<Object> without(List<?> stated) {
        List<Object> shorter = new ArrayList<>();
        for (int i = 0; i < stated.size(); i++) {
            List<Object> rest = new ArrayList<>(stated);
            rest.remove(i);
            shorter.add(List.copyOf(rest));
        }
        return shorter;
    }
}
