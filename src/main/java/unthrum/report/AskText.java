package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Stakes;
import unthrum.reasoning.change.Unknown;
import unthrum.derive.Assumed;

/**
 * What to measure next, the weightiest first, and what need not be measured. A fact that several panels lack is one
 * errand: it is asked once, with what hangs on it on each of them.
 */
public final class AskText {

    private static final int INDENT = 2;
    private static final int COLUMN = 4;
    /** A gain below this reads as nothing. */
    private static final double TOLD = 0.0005;

    private final Page page;
    private final String currency;

    private AskText(Page page, String currency) {
        this.page = page;
        this.currency = currency;
    }

    /**
     * @param slight   panels that stay bare because hardly anything would be gained
     * @param currency the one of the catalogue's prices
     */
    public static String of(String survey, List<Unknown> unknowns, List<PanelAdvice> slight, String currency, int width,
                            Style style) {
        Page page = new Page(width, style);
        page.title(survey + ": what to measure next");
        new AskText(page, currency).print(unknowns, slight);
        return page.toString();
    }

    private void print(List<Unknown> unknowns, List<PanelAdvice> slight) {
        Map<String, List<Unknown>> errands = unknowns.stream().filter(Unknown::decides)
                .collect(Collectors.groupingBy(u -> u.lever().key(), LinkedHashMap::new, Collectors.toList()));
        if (errands.isEmpty()) {
            page.paragraph(INDENT, "Nothing: no fact that is still unknown changes what any panel gets.");
        }
        int number = 1;
        for (List<Unknown> errand : errands.values()) {
            page.blank();
            errand(number++, errand);
        }
        if (!slight.isEmpty()) {
            page.blank();
            page.heading("Look or tap again: by the sums it is hardly worth it");
            slight.forEach(advice -> page.bullet(INDENT, advice.name() + ": " + GainWords.slight(advice)));
        }
        idle(unknowns);
    }

    private void errand(int number, List<Unknown> errand) {
        Unknown first = errand.get(0);
        page.entry(0, number + ".", COLUMN, English.capital(first.lever().how().called()));
        page.paragraph(COLUMN, "How: " + English.sentence(first.lever().how().measure()));
        Map<Assumed, List<Unknown>> assumed = errand.stream().filter(u -> u.assumed().isPresent())
                .collect(Collectors.groupingBy(u -> u.assumed().get(), LinkedHashMap::new, Collectors.toList()));
        assumed.forEach((a, where) -> page.paragraph(COLUMN, "Until then" + (assumed.size() == 1 ? ""
                : " on " + English.and(where.stream().map(LeverWords::where).toList())) + ": "
                + LeverWords.written(a.value()) + ", because " + a.because() + "."));
        List<String> dangerOnly = new ArrayList<>();
        for (Unknown unknown : errand) {
            if (unknown.ways().isEmpty()) {
                dangerOnly.add(LeverWords.where(unknown));
            } else {
                page.bullet(COLUMN, LeverWords.where(unknown) + ": " + ways(unknown) + " At stake: "
                        + stakes(unknown.stakes()) + ".");
            }
        }
        if (!dangerOnly.isEmpty()) {
            page.bullet(COLUMN, "For safety alone: " + English.and(dangerOnly) + ".");
        }
    }

    private static String ways(Unknown unknown) {
        return unknown.ways().stream().collect(Collectors.groupingBy(Unknown.Way::effects, LinkedHashMap::new,
                Collectors.toList())).values().stream().map(alike -> way(unknown, alike))
                .collect(Collectors.joining(" "));
    }

    private static String way(Unknown unknown, List<Unknown.Way> alike) {
        EffectWords words = new EffectWords(new Sentences(PlaceNames.on(unknown.today().panel().facts())));
        Unknown.Way first = alike.get(0);
        List<String> values = alike.stream().map(w -> LeverWords.value(w.turn().to())).toList();
        String to = unknown.lever().isScale() ? "at " + values.get(0)
                : (unknown.lever().isList() ? "if it names '" : "if it is '") + String.join("' or '", values) + "'";
        return English.sentence(to + ", " + words.of(first.effects(), first.advice().layup()));
    }

    private String stakes(Stakes stakes) {
        List<String> said = new ArrayList<>();
        if (stakes.danger()) {
            said.add("safety");
        }
        if (stakes.gain() >= TOLD) {
            said.add("up to " + GainWords.share(stakes.gain()) + " " + GainWords.ALL);
        }
        if (stakes.mass() > 0) {
            said.add("up to " + Amounts.mass(stakes.mass()));
        }
        if (Math.round(stakes.price()) > 0) {
            said.add("up to " + Amounts.money(Math.round(stakes.price()), currency) + " of material");
        }
        return said.isEmpty() ? "the verdict alone" : English.and(said);
    }

    private void idle(List<Unknown> unknowns) {
        List<Unknown> idle = unknowns.stream().filter(u -> !u.decides()).toList();
        list("Changes nothing by itself, but the plan asks for it", idle.stream().filter(Unknown::asked).toList());
        list("Need not be measured", idle.stream().filter(u -> !u.asked()).toList());
    }

    private void list(String title, List<Unknown> unknowns) {
        Map<String, List<String>> byPanel = new TreeMap<>();
        unknowns.forEach(u -> byPanel.computeIfAbsent(u.panel(), p -> new ArrayList<>()).add(u.lever().name()));
        if (!byPanel.isEmpty()) {
            page.blank();
            page.heading(title);
            byPanel.forEach((panel, names) -> page.bullet(INDENT, panel + ": " + English.andNumbered(names) + "."));
        }
    }
}
