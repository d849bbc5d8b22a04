package unthrum.knowledge;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.stream.Collectors;
import unthrum.facts.Threshold;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.reading.YamlReader;
import unthrum.survey.Aim;
import unthrum.survey.Zone;

/** All that the program knows of the trade: rules, numbers, sources, and what to take when a fact is missing. */
public final class Knowledge {

    private static final String FOLDER = "unthrum/rules/";

    private final RuleBase rules;
    private final Map<String, ThresholdEntry> thresholds;
    private final Map<String, Threshold> numbers;
    private final Map<String, Source> sources;
    private final List<Assumption> assumptions;
    private final Map<Aim, AimEntry> aims;
    private final Measuring.File measuringFile;
    private final Map<String, Measuring> measuring;
    private final Map<String, Set<Zone>> reckoned = new HashMap<>();

    private Knowledge(RuleBase rules, List<ThresholdEntry> thresholds, List<Source> sources,
                      List<Assumption> assumptions, Collection<AimEntry> aims, Measuring.File measuring) {
        this.rules = rules;
        this.thresholds = byKey(thresholds, ThresholdEntry::threshold);
        this.numbers = byKey(thresholds.stream().map(ThresholdEntry::number).toList(), Threshold::id);
        this.sources = byKey(sources, Source::source);
        this.assumptions = List.copyOf(assumptions);
        this.aims = aims.stream().collect(Collectors.toMap(AimEntry::aim, a -> a));
        this.measuringFile = measuring;
        this.measuring = byKey(measuring.measuring(), Measuring::fact);
        measuring.places().forEach(p -> p.parts().forEach(part -> reckoned.put(part, Set.copyOf(p.zones()))));
    }

    /** The knowledge in the jar; the rules are set up beside the reading of the files. */
    public static Knowledge load() {
        CompletableFuture<RuleBase> rules = CompletableFuture.supplyAsync(RuleBase::load);
        List<ThresholdEntry> thresholds = file("thresholds.yaml", ThresholdEntry.File.class).thresholds();
        List<Source> sources = file("sources.yaml", Source.File.class).sources();
        List<Assumption> assumptions = file("assumptions.yaml", Assumption.File.class).assumptions();
        List<AimEntry> aims = file("aims.yaml", AimEntry.File.class).aims();
        Measuring.File measuring = file("measuring.yaml", Measuring.File.class);
        return new Knowledge(rules.join(), thresholds, sources, assumptions, aims, measuring);
    }

    /** The same knowledge with the numbers of a file in place of its own; the file need not name them all. */
    public Knowledge withThresholds(Path file) {
        Map<String, ThresholdEntry> changed = new LinkedHashMap<>(thresholds);
        YamlReader.read(file, ThresholdEntry.File.class, (f, places) -> {
            for (int i = 0; f.thresholds() != null && i < f.thresholds().size(); i++) {
                if (places.sound("thresholds[" + i + "]")) {
                    replace(f.thresholds().get(i), "thresholds[" + i + "]", changed, places);
                }
            }
        });
        return new Knowledge(rules, List.copyOf(changed.values()), List.copyOf(sources.values()), assumptions,
                aims.values(), measuringFile);
    }

    /** The same knowledge without some of its rules. */
    public Knowledge without(Collection<String> ids) {
        return new Knowledge(rules.without(ids), List.copyOf(thresholds.values()), List.copyOf(sources.values()),
                assumptions, aims.values(), measuringFile);
    }

    private static void replace(ThresholdEntry entry, String path, Map<String, ThresholdEntry> all, Places places) {
        ThresholdEntry known = all.get(entry.threshold());
        if (known == null) {
            places.problem(path + ".threshold", "no threshold '" + entry.threshold() + "' in the rule base",
                    "the id of one", Nearest.remedy(entry.threshold(), all.keySet()));
        } else if (known.value().dimension() != entry.value().dimension()) {
            places.problem(path + ".value", "'" + entry.value() + "' is " + entry.value().dimension().phrase(),
                    known.value().dimension().phrase() + ", as in the rule base", "");
        } else {
            all.put(entry.threshold(), entry);
        }
    }

    public RuleBase rules() {
        return rules;
    }

    /** The card of the rule with that sentence. */
    public RuleCard card(String ruleName) {
        return rules.cardsByName().get(ruleName);
    }

    public Collection<RuleCard> cards() {
        return rules.cardsByName().values();
    }

    public Collection<ThresholdEntry> thresholds() {
        return thresholds.values();
    }

    /** The entry of a number by its id; an unknown id is a defect. */
    public ThresholdEntry threshold(String id) {
        number(id);
        return thresholds.get(id);
    }

    public Collection<Threshold> numbers() {
        return numbers.values();
    }

    /** The number behind an id, in SI; an unknown id is a defect. */
    public double number(String id) {
        Threshold threshold = numbers.get(id);
        if (threshold == null) {
            throw new IllegalArgumentException("no threshold '" + id + "'");
        }
        return threshold.value();
    }

    public Collection<Source> sources() {
        return sources.values();
    }

    /** A source spelled out: its title, or the plain words of a mark. */
    public String sourceTitle(String key) {
        Source source = sources.get(key);
        return source != null ? source.title() : switch (key) {
            case "common-practice" -> "common practice, no published source";
            case "from-memory" -> "a number from memory, to be checked";
            default -> throw new IllegalArgumentException("no source '" + key + "'");
        };
    }

    public List<Assumption> assumptions() {
        return assumptions;
    }

    /** What an aim is measured by. */
    public AimEntry aim(Aim aim) {
        return aims.get(aim);
    }

    /** What is taken for a fact in a zone when nobody stated it. */
    public Optional<Assumption> assumption(String fact, Zone zone) {
        return assumptions.stream().filter(a -> a.fits(fact, zone)).findFirst();
    }

    /** How the facts of a survey are measured and changed. */
    public Collection<Measuring> measuring() {
        return measuring.values();
    }

    /** How a fact is measured and changed, by the survey's key; an unknown key is a defect. */
    public Measuring measuring(String fact) {
        Measuring found = measuring.get(fact);
        if (found == null) {
            throw new IllegalArgumentException("nobody says how to measure '" + fact + "'");
        }
        return found;
    }

    /** Whether a part or a source, by its word, is to be reckoned with in a zone. */
    public boolean isReckonedWith(String part, Zone zone) {
        return !reckoned.containsKey(part) || reckoned.get(part).contains(zone);
    }

    /** Which rules can want which layer. */
    public Wanting wanting() {
        return new Wanting(rules);
    }

    private static <T extends Record> T file(String name, Class<T> type) {
        return YamlReader.read("rules/" + name,
                Knowledge.class.getClassLoader().getResourceAsStream(FOLDER + name), type);
    }

    private static <T> Map<String, T> byKey(List<T> values, Function<T, String> key) {
        return values.stream().collect(Collectors.toMap(key, v -> v, (a, b) -> {
            throw new IllegalStateException("'" + key.apply(a) + "' stands twice");
        }, LinkedHashMap::new));
    }
}
