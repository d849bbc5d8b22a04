package unthrum.report;

import java.util.List;
import java.util.stream.Collectors;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.reasoning.change.Change.Turn;
import unthrum.reasoning.change.Lever;
import unthrum.reasoning.change.Unknown;
import unthrum.survey.PanelEntry;

/** Facts that can be turned, and their values, in words. */
final class LeverWords {

    private LeverWords() {
    }

    /** What the fact is called: 'clearance', 'the answer to a knock (bay 2)'. */
    static String name(Lever lever) {
        return lever.how().called() + part(lever);
    }

    /** The panel, and the part of it where there are several: 'floor-rear', 'floor-rear (bay 2)'. */
    static String where(Unknown unknown) {
        return unknown.panel() + part(unknown.lever());
    }

    private static String part(Lever lever) {
        if (lever.number() == 0) {
            return "";
        }
        String kind = switch (lever.key()) {
            case "tap" -> "bay";
            case "fixing size" -> "fixing";
            case "rib width" -> "rib";
            default -> "hole";
        };
        return " (" + kind + " " + lever.number() + ")";
    }

    /** What holds today: '12 mm' for a number, a word in quotes. */
    private static String today(Lever lever) {
        String today = lever.today().map(LeverWords::value).orElseThrow();
        return (lever.isScale() ? today : "'" + today + "'") + (lever.stated() ? "" : " (assumed)");
    }

    static String value(Object value) {
        if (value instanceof Enum<?> word) {
            return Words.of(word);
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        if (value instanceof List<?> list) {
            return list.isEmpty() ? "none" : English.and(list.stream().map(LeverWords::value).toList());
        }
        if (value instanceof PanelEntry.Opening opening) {
            return Words.of(opening.kind());
        }
        if (value instanceof PanelEntry.Fixing fixing) {
            return Words.of(fixing.kind());
        }
        if (value instanceof PanelEntry.Cover cover) {
            return Words.of(cover.kind());
        }
        return value instanceof Quantity quantity ? quantity.toString() : String.valueOf(value);
    }

    /** A value as a file writes it, as a reader wants it. */
    static String written(String value) {
        return value.replace(" degC", " °C");
    }

    /** 'with 9.9 mm clearance instead of 12 mm', 'with the paint 'fresh' or 'flaking' instead of 'sound''. */
    static String turn(Lever lever, List<Object> to) {
        String values = either(to.stream().map(LeverWords::value).toList());
        String turned = lever.isScale() ? values + " " + name(lever)
                : lever.isList() ? "'" + values + "' on " + name(lever)
                : name(lever) + " '" + values + "'";
        return "with " + turned + (lever.today().stream().anyMatch(to::contains) ? ", measured and no longer assumed"
                : lever.today().isEmpty() ? ", which is not written down" : " instead of " + today(lever));
    }

    static String turns(List<Turn> turns) {
        return turns.stream().map(t -> turn(t.lever(), List.of(t.to()))).collect(Collectors.joining(" and "));
    }

    private static String either(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words)
                : String.join("', '", words.subList(0, last)) + "' or '" + words.get(last);
    }
}
