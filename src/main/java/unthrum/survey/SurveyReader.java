package unthrum.survey;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import unthrum.reading.Check;
import unthrum.reading.Places;
import unthrum.reading.Problem;
import unthrum.reading.Problems;
import unthrum.reading.Words;
import unthrum.reading.YamlReader;

/**
 * Reads a survey file, or throws all {@link Problems} of it at once: of the form first read by
 * {@link YamlReader}, and of facts that cannot be true together.
 */
public final class SurveyReader {
    private SurveyReader() {
    }

    public static Survey read(Path file) {
        return YamlReader.read(file, Survey.class, SurveyReader::check);
    }

    /** @param further what else must hold, checked after the facts and only reported with them */
    public static Survey read(Path file, Check<Survey> further) {
        return YamlReader.read(file, Survey.class, (survey, places) -> {
            check(survey, places);
            further.check(survey, places);
        });
    }

    /** @param name what to call the stream in problems */
    public static Survey read(String name, InputStream in) {
        return YamlReader.read(name, in, Survey.class, SurveyReader::check);
    }

    /**
     * What cannot be true together on a panel as it might be, which stands in no file.
     *
     * @param place what to call the panel in problems
     */
    public static List<Problem> problems(String place, PanelEntry panel, Drive drive) {
        return Problems.in(place, panel, (p, places) -> new PanelCheck(p, "", places).all(drive == Drive.ELECTRIC));
    }

    private static void check(Survey survey, Places places) {
        if (places.sound("aims")) {
            repeatedAims(survey.aims(), places);
        }
        if (places.sound("limits")) {
            survey.limits().ifPresent(limits -> roofWithinWhole(limits, places));
        }
        if (places.sound("vehicle")) {
            engineOfElectric(survey.vehicle(), places);
        }
        if (places.sound("stock")) {
            List<StockEntry> stock = survey.stock().orElse(List.of());
            for (int i = 0; i < stock.size(); i++) {
                sheetsOrLength(stock.get(i), "stock[" + i + "]", places);
            }
        }
        if (survey.panels() != null) {
            panels(survey, places);
        }
    }

    private static void repeatedAims(List<Aim> aims, Places places) {
        for (int i = 0; i < aims.size(); i++) {
            if (aims.indexOf(aims.get(i)) < i) {
                places.problem("aims[" + i + "]", "the aim '" + Words.of(aims.get(i)) + "' again",
                        "each aim once, the weightiest first", "delete one of the two");
            }
        }
    }

    private static void roofWithinWhole(Limits limits, Places places) {
        if (limits.roofMass().isPresent() && limits.addedMass().isPresent()
                && limits.roofMass().get().si() > limits.addedMass().get().si()) {
            places.problem("limits.roof mass", "a roof mass of " + limits.roofMass().get(),
                    "no more than the added mass of " + limits.addedMass().get() + ", which it is a part of", "");
        }
    }

    private static void engineOfElectric(VehicleEntry vehicle, Places places) {
        if (vehicle.drive() == Drive.ELECTRIC && vehicle.cylinders().isPresent()) {
            places.problem("vehicle.cylinders", "cylinders on an electric vehicle",
                    "no such key, or another drive", "delete the key");
        }
    }

    private static void sheetsOrLength(StockEntry entry, String path, Places places) {
        boolean pieces = entry.sheets().isPresent() || entry.size().isPresent();
        if (pieces == entry.length().isPresent()) {
            String found = !pieces ? "neither sheets nor a length" : entry.sheets().isPresent()
                    ? "both sheets and a length" : "both a size and a length";
            places.problem(path, found + " of '" + entry.material() + "'",
                    "sheets for whole sheets, a length for what is left of a roll, or the size of an offcut", "");
        }
    }

    private static void panels(Survey survey, Places places) {
        boolean electric = places.sound("vehicle") && survey.vehicle().drive() == Drive.ELECTRIC;
        Map<String, String> first = new HashMap<>();
        for (int i = 0; i < survey.panels().size(); i++) {
            PanelEntry panel = survey.panels().get(i);
            String path = "panels[" + i + "]";
            if (panel != null && panel.panel() != null) {
                String name = path + ".panel";
                String earlier = first.putIfAbsent(panel.panel().toLowerCase(Locale.ROOT), name);
                if (earlier != null) {
                    places.problem(name, "the panel '" + panel.panel() + "' again (first in line "
                            + places.line(earlier) + ")", "a name of its own for each panel", "");
                }
            }
            if (panel != null && panel.size() != null && places.sound(path + ".size")) {
                new PanelCheck(places.soundParts(panel, path), path, places).all(electric);
            }
        }
    }
}
