package unthrum.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import unthrum.facts.Access;
import unthrum.facts.Fact;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Rib;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.facts.Surface;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Sheet;
import unthrum.reading.Quantity;
import unthrum.survey.Curve;
import unthrum.survey.Dirt;
import unthrum.survey.Face;
import unthrum.survey.HeatSource;
import unthrum.survey.Metal;
import unthrum.survey.NoiseSource;
import unthrum.survey.OldLayer;
import unthrum.survey.Paint;
import unthrum.survey.PanelEntry;
import unthrum.survey.PanelEntry.Shape;
import unthrum.survey.PanelEntry.Skin;
import unthrum.survey.PanelEntry.SurfaceEntry;
import unthrum.survey.Reach;
import unthrum.survey.Rust;
import unthrum.survey.Traffic;
import unthrum.survey.Wetness;

/** Turns one panel of the survey into facts. */
public final class PanelDeriver {

    private final Knowledge knowledge;
    private final BayDeriver bays;
    private final SoundDeriver sound;
    private final ClimateDeriver climate;
    private final Step<Stated<List<Rib>>> ribSteps = new Step<>();
    private final Step<Stated<Panel>> panelSteps = new Step<>();
    private final Step<Stated<Room>> roomSteps = new Step<>();
    private final Step<Stated<Heat>> heatSteps = new Step<>();
    private final Step<Stated<Access>> accessSteps = new Step<>();
    private final Step<Stated<Surface>> surfaceSteps = new Step<>();
    private final Step<Stated<Setting>> settingSteps = new Step<>();
    private final Step<Stated<List<Fact>>> fittingSteps = new Step<>();
    private final Step<List<BayDeriver.Derived>> baySteps = new Step<>();
    private final Step<List<Fact>> soundSteps = new Step<>();
    private final Step<List<Fact>> climateSteps = new Step<>();

    /** What was made of what the survey states, and what was assumed for it. */
    private record Stated<T>(T made, Map<String, Assumed> taken) {
    }

    PanelDeriver(Knowledge knowledge, Vehicle vehicle, Demand demand) {
        this.knowledge = knowledge;
        this.bays = new BayDeriver(knowledge, demand);
        this.sound = new SoundDeriver(knowledge);
        this.climate = new ClimateDeriver(knowledge, vehicle);
    }

    public PanelFacts derive(PanelEntry entry) {
        Map<String, Assumed> taken = new LinkedHashMap<>();
        String name = entry.panel();
        List<Rib> ribs = stated(ribSteps, entry, taken, List.of(entry.ribs()), a -> ribs(entry, a));
        Panel panel = stated(panelSteps, entry, taken, List.of(entry.size(), entry.skin(), entry.shape(), ribs,
                lists(entry)), a -> panel(entry, ribs, a.get()));
        Room room = stated(roomSteps, entry, taken, List.of(entry.clearance(), entry.clearanceTo(),
                entry.liningOnRibs()), a -> room(entry, a.get()));
        Heat heat = stated(heatSteps, entry, taken, List.of(entry.heat()), a -> heat(entry, a.get()));
        Access access = stated(accessSteps, entry, taken, List.of(entry.reach(), entry.reachable(), entry.liftsOut()),
                a -> access(entry, a.get()));
        Surface surface = stated(surfaceSteps, entry, taken, List.of(entry.surface()), a -> surface(entry, a.get()));
        Setting setting = stated(settingSteps, entry, taken, List.of(entry.wet(), entry.driesOut(), entry.traffic(),
                entry.nearEar(), entry.nearNoise()), a -> setting(entry, a.get()));
        List<BayDeriver.Derived> derived = baySteps.of(name,
                List.of(panel, ribs, entry.tap(), entry.shape(), entry.ribs()), () -> bays.bays(panel, ribs, entry));
        List<Fact> fittings = stated(fittingSteps, entry, taken, List.of(entry.openings(), entry.fixings(),
                entry.covers(), entry.moving(), entry.behind(), entry.missing(), entry.loose(), entry.lid()),
                a -> new Fittings(entry, a).facts());
        List<Fact> facts = new ArrayList<>(List.of(panel, room, heat, access, surface, setting));
        facts.addAll(ribs);
        derived.forEach(d -> facts.add(new MeasuredDecay(knowledge, entry).on(d.bay())));
        facts.addAll(fittings);
        facts.addAll(soundSteps.of(name, List.of(panel, room, fittings), () -> sound.facts(panel, room, fittings)));
        facts.addAll(climateSteps.of(name, List.of(panel, room, setting, heat),
                () -> climate.facts(panel, room, setting, heat)));
        return new PanelFacts(name, facts, taken, derived.stream().map(BayDeriver.Derived::modes).toList());
    }

    /** What a step makes of what the survey states, with the assumptions that it takes where the survey is silent. */
    private <T> T stated(Step<Stated<T>> step, PanelEntry entry, Map<String, Assumed> taken, List<?> read,
                         Function<Supplier<Answers>, T> make) {
        Stated<T> stated = step.of(entry.panel(), Stream.concat(Stream.of(entry.zone()), read.stream()).toList(), () -> {
            Map<String, Assumed> own = new LinkedHashMap<>();
            return new Stated<>(make.apply(() -> answers(entry, own)), own);
        });
        stated.taken.forEach(taken::putIfAbsent);
        return stated.made;
    }

    /** Which lists the survey has. */
    private static List<Boolean> lists(PanelEntry entry) {
        return Stream.of(entry.ribs(), entry.tap(), entry.openings(), entry.fixings(), entry.moving(), entry.covers(),
                entry.behind(), entry.missing(), entry.loose()).map(Optional::isPresent).toList();
    }

    private Answers answers(PanelEntry entry, Map<String, Assumed> taken) {
        return new Answers(knowledge, entry.zone(), taken);
    }

    private static List<Rib> ribs(PanelEntry entry, Supplier<Answers> each) {
        List<Rib> ribs = new ArrayList<>();
        for (PanelEntry.Rib rib : entry.ribs().orElse(List.of())) {
            Answers answers = each.get();
            double breadth = answers.quantity(rib.width(), "breadth", "rib width");
            ribs.add(new Rib(entry.panel(), rib.kind(), rib.runs(), rib.at().si(), breadth, answers.assumed()));
        }
        return ribs;
    }

    private static Panel panel(PanelEntry entry, List<Rib> ribs, Answers answers) {
        double length = entry.size().get(0).si();
        double width = entry.size().get(1).si();
        Metal metal = answers.word(entry.skin().map(Skin::metal), Metal.class, "metal");
        double gauge = answers.quantity(entry.skin().flatMap(Skin::gauge), "gauge");
        Curve curve = answers.word(entry.shape().map(Shape::curve), Curve.class, "curve", "shape");
        double rise = curve == Curve.FLAT ? 0 : rise(entry, answers, curve == Curve.ROLLED
                ? width : Math.min(length, width));
        listsLeftOpen(entry, answers);
        BayGrid grid = BayGrid.of(length, width, ribs);
        Sheet sheet = metal == Metal.STEEL ? Sheet.steel(gauge) : Sheet.aluminium(gauge);
        return new Panel(entry.panel(), entry.zone(), metal, gauge, length, width, length * width, curve, rise,
                grid.alongLength().size() * grid.alongWidth().size(), sheet.surfaceDensity(), answers.assumed());
    }

    /** Lists that the survey leaves open stand among the panel's assumed facts under their own keys. */
    private static void listsLeftOpen(PanelEntry entry, Answers answers) {
        answers.list(entry.ribs(), "bays", "ribs");
        answers.list(entry.tap(), "tap", "tap");
        answers.list(entry.openings(), "openings", "openings");
        answers.list(entry.fixings(), "fixings", "fixings");
        answers.list(entry.moving(), "moving", "moving");
        answers.list(entry.covers(), "covers", "covers");
        answers.list(entry.behind(), "behind", "behind");
        answers.list(entry.missing(), "missing", "missing");
        answers.list(entry.loose(), "loose", "loose");
    }

    /**
     * The rise as stated, of two that over the shorter side, or from the radius over the curved side: s²/8R, plane
     * geometry of a shallow arc.
     */
    private static double rise(PanelEntry entry, Answers answers, double curvedSide) {
        Optional<Quantity> radius = entry.shape().flatMap(Shape::radius);
        Optional<Quantity> stated = entry.shape().flatMap(entry.size().get(0).si() < entry.size().get(1).si()
                ? Shape::riseAlong : Shape::riseAcross).or(() -> entry.shape().flatMap(Shape::rise));
        return stated.isEmpty() && radius.isPresent()
                ? curvedSide * curvedSide / (8 * radius.get().si())
                : answers.quantity(stated, "rise");
    }

    private static Room room(PanelEntry entry, Answers answers) {
        return new Room(entry.panel(), answers.quantity(entry.clearance(), "clearance"),
                answers.word(entry.clearanceTo(), Face.class, "to", "clearance to"),
                answers.flag(entry.liningOnRibs(), "liningOnRibs"), answers.assumed());
    }

    /** Where nothing heats the panel it gets as hot as a closed vehicle does. */
    private Heat heat(PanelEntry entry, Answers answers) {
        HeatSource from = answers.word(entry.heat().map(PanelEntry.Heat::from), HeatSource.class, "from", "heat from");
        Optional<Quantity> stated = entry.heat().flatMap(PanelEntry.Heat::peak);
        double peak = from == HeatSource.NONE && stated.isEmpty()
                ? knowledge.number("usual/closed-vehicle") : answers.quantity(stated, "peak");
        return new Heat(entry.panel(), from, peak, answers.assumed());
    }

    private static Access access(PanelEntry entry, Answers answers) {
        Reach reach = answers.word(entry.reach(), Reach.class, "reach");
        double reachable = switch (reach) {
            case OPEN -> 1;
            case NONE -> 0;
            case PART -> answers.quantity(entry.reachable(), "reachable");
        };
        return new Access(entry.panel(), reach, reachable, answers.flag(entry.liftsOut(), "liftsOut"),
                answers.assumed());
    }

    private static Surface surface(PanelEntry entry, Answers answers) {
        Optional<SurfaceEntry> surface = entry.surface();
        return new Surface(entry.panel(),
                answers.word(surface.flatMap(SurfaceEntry::paint), Paint.class, "paint"),
                answers.word(surface.flatMap(SurfaceEntry::dirt), Dirt.class, "dirt"),
                answers.word(surface.flatMap(SurfaceEntry::rust), Rust.class, "rust"),
                answers.word(surface.flatMap(SurfaceEntry::old), OldLayer.class, "old"), answers.assumed());
    }

    private static Setting setting(PanelEntry entry, Answers answers) {
        return new Setting(entry.panel(), answers.word(entry.wet(), Wetness.class, "wet"),
                answers.flag(entry.driesOut(), "driesOut"), answers.word(entry.traffic(), Traffic.class, "traffic"),
                answers.flag(entry.nearEar(), "nearEar"),
                answers.word(entry.nearNoise(), NoiseSource.class, "nearNoise"), answers.assumed());
    }
}
