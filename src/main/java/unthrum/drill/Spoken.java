package unthrum.drill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.reading.Nearest;
import unthrum.reading.Problems;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.change.Outcome;
import unthrum.reasoning.change.Spot;

/**
 * Answers as they are typed: {@code damping 1 2; insulation; seal a}. Layers are parted by semicolons or commas;
 * damping is followed by the numbers of its bays (all of them when there is none), seal by the letters of its holes. In
 * place of layers: nothing, wait (the panel cannot be reached or prepared yet), measure (a measurement decides).
 */
public final class Spoken {

    public static final String NOTHING = "nothing";
    public static final String WAIT = "wait";
    public static final String MEASURE = "measure";
    private static final String NONE = "none";

    private final Exercise exercise;
    private final String where;
    private final SortedSet<Spot> spots = new TreeSet<>();
    private Verdict instead;

    private Spoken(Exercise exercise, String where) {
        this.exercise = exercise;
        this.where = where;
    }

    /**
     * What goes where.
     *
     * @param where what to call the answer in a problem
     * @throws Problems when it says what cannot be said of this panel
     */
    public static Outcome outcome(String typed, Exercise exercise, String where) {
        Spoken spoken = new Spoken(exercise, where);
        List<String> parts = Arrays.stream(typed.trim().split("\\s*[;,]\\s*")).filter(p -> !p.isEmpty()).toList();
        if (parts.isEmpty()) {
            throw spoken.problem("an empty answer", words(), "write 'nothing' where the panel stays bare");
        }
        parts.forEach(spoken::part);
        return spoken.outcome();
    }

    /** The numbers of the reasons: {@code 1 4}, or {@code none}. */
    public static SortedSet<Integer> why(String typed, Exercise exercise, String where) {
        SortedSet<Integer> numbers = new TreeSet<>();
        for (String word : typed.trim().split("[\\s,;]+")) {
            if (!word.equals(NONE)) {
                numbers.add(reason(word, exercise, where));
            }
        }
        return numbers;
    }

    /** The number of a reason that is offered. */
    static int reason(String word, Exercise exercise, String where) {
        int offered = exercise.choices().size();
        if (!word.matches("[1-9][0-9]?") || Integer.parseInt(word) > offered) {
            throw Problems.at(where, word.isEmpty() ? "no reason" : "'" + word + "'",
                    "the numbers of reasons from 1 to " + offered + ", such as '1 4'", "write 'none' where none holds");
        }
        return Integer.parseInt(word);
    }

    /** The answer as one would type it. */
    public static String of(Outcome outcome, Exercise exercise) {
        List<String> parts = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            List<Place> places = outcome.spots().stream().filter(s -> s.layer() == layer).map(Spot::place).toList();
            if (!places.isEmpty()) {
                parts.add((layer.word() + " " + String.join(" ", marks(layer, places, exercise))).trim());
            }
        }
        switch (outcome.verdict()) {
            case HOLD -> parts.add(0, WAIT);
            case ASK -> parts.add(0, MEASURE);
            default -> {
                if (parts.isEmpty()) {
                    parts.add(NOTHING);
                }
            }
        }
        return String.join("; ", parts);
    }

    /** The letter of a hole, counted from 0. */
    public static String letter(int hole) {
        return String.valueOf((char) ('a' + hole));
    }

    private static List<String> marks(Layer layer, List<Place> places, Exercise exercise) {
        List<Place> parts = parts(layer, exercise);
        return layer == Layer.DAMPING && places.containsAll(parts) ? List.of() : parts.stream()
                .filter(places::contains).map(parts::indexOf).map(i -> mark(layer, i)).toList();
    }

    private static String mark(Layer layer, int index) {
        return layer == Layer.SEAL ? letter(index) : String.valueOf(index + 1);
    }

    /** The places that a layer may be told apart by: bays, holes, or only the whole panel. */
    private static List<Place> parts(Layer layer, Exercise exercise) {
        return switch (layer) {
            case DAMPING -> exercise.bays().stream().map(b -> b.place()).toList();
            case SEAL -> exercise.openings().stream().map(o -> o.place()).toList();
            default -> List.of();
        };
    }

    private void part(String part) {
        switch (part) {
            case NOTHING -> instead(Verdict.LEAVE_BARE);
            case WAIT -> instead(Verdict.HOLD);
            case MEASURE -> instead(Verdict.ASK);
            default -> layer(part);
        }
    }

    private void instead(Verdict verdict) {
        if (instead != null && instead != verdict) {
            throw problem("two of nothing, wait and measure", "one of them", "");
        }
        instead = verdict;
    }

    private void layer(String part) {
        List<Layer> layers = layers();
        Layer layer = layers.stream().filter(l -> part.equals(l.word()) || part.startsWith(l.word() + " ")).findFirst()
                .orElseThrow(() -> problem("'" + part + "'", words(), Nearest.remedy(part.replaceAll("( \\w)+$", ""),
                        layers.stream().map(Layer::word).toList())));
        String rest = part.substring(layer.word().length()).trim();
        List<Place> parts = parts(layer, exercise);
        if (rest.isEmpty()) {
            everywhere(layer, parts);
            return;
        }
        for (String mark : rest.split("\\s+")) {
            spots.add(new Spot(layer, place(layer, mark, parts)));
        }
    }

    private void everywhere(Layer layer, List<Place> parts) {
        if (layer == Layer.SEAL && parts.size() != 1) {
            throw parts.isEmpty() ? problem("seal on a panel without holes", "another layer, or nothing", "")
                    : problem("seal without a hole", "the letters of the holes from a to "
                            + letter(parts.size() - 1) + ", such as 'seal a'", "");
        }
        (parts.isEmpty() ? List.of(Place.of(exercise.advice().name())) : parts)
                .forEach(place -> spots.add(new Spot(layer, place)));
    }

    private Place place(Layer layer, String mark, List<Place> parts) {
        for (int i = 0; i < parts.size(); i++) {
            if (mark(layer, i).equals(mark)) {
                return parts.get(i);
            }
        }
        String alone = layer == Layer.SEAL ? "another layer: the panel has no holes"
                : "'" + layer.word() + "' alone: it covers the whole panel";
        throw problem("'" + layer.word() + " " + mark + "'", parts.isEmpty() ? alone
                : range(layer, parts), "");
    }

    private static String range(Layer layer, List<Place> parts) {
        String kind = layer == Layer.SEAL ? "hole" : "bay";
        return parts.size() == 1 ? kind + " " + mark(layer, 0)
                : kind + "s from " + mark(layer, 0) + " to " + mark(layer, parts.size() - 1);
    }

    private Outcome outcome() {
        boolean laid = spots.stream().anyMatch(s -> s.layer() != Layer.SEAL);
        if (instead != null && laid || instead == Verdict.HOLD && !spots.isEmpty()) {
            throw problem("layers together with nothing, wait or measure", "one or the other", "");
        }
        boolean patches = spots.stream().allMatch(s -> s.layer() == Layer.SEAL || s.layer() == Layer.DAMPING);
        Verdict laying = !laid ? Verdict.LEAVE_BARE : patches ? Verdict.PATCH : Verdict.COVER;
        return new Outcome(instead != null ? instead : laying, spots);
    }

    private Problems problem(String found, String expected, String remedy) {
        return Problems.at(where, found, expected, remedy);
    }

    private static List<Layer> layers() {
        return Arrays.stream(Layer.values()).filter(l -> l != Layer.ANY).toList();
    }

    /** All the words that an answer may be made of. */
    public static String words() {
        return layers().stream().map(Layer::word).collect(Collectors.joining(", ")) + ", " + NOTHING + ", " + WAIT
                + " or " + MEASURE;
    }
}
