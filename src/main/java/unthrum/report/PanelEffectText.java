package unthrum.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import unthrum.effect.BayEffect;
import unthrum.effect.Blocking;
import unthrum.effect.HeatEffect;
import unthrum.effect.HeatEffect.Heated;
import unthrum.effect.PanelEffect;
import unthrum.effect.Range;
import unthrum.physics.Band;
import unthrum.physics.Estimate;
import unthrum.reading.Dimension;

/** What the layers do to one panel, in a line for each kind of effect; what cannot be told says why. */
final class PanelEffectText {

    static final String COMPUTED = "What a barrier on foam or felt does to sound is computed, not measured.";

    private final PanelEffect effect;
    private final Sentences sentences;

    PanelEffectText(PanelEffect effect, Sentences sentences) {
        this.effect = effect;
        this.sentences = sentences;
    }

    /** Nothing for a panel on which nothing changes. */
    List<String> lines() {
        List<String> lines = new ArrayList<>(rings());
        boolean blocks = effect.blocking().stream().map(Blocking::losses).filter(Estimate::isWithin)
                .anyMatch(l -> Math.round(l.value().gain()) != 0);
        if (blocks) {
            lines.add(blocking());
            floated(lines);
        }
        if (!effect.wallMeasured()) {
            lines.add(COMPUTED);
        }
        flow("Heat coming in", effect.heat().summer(), lines);
        flow("Heat lost in winter", effect.heat().winter(), lines);
        effect.heat().atPeak().stream().min(Comparator.comparingDouble(Heated::margin)).ifPresent(h -> lines.add(hot(h)));
        if (effect.mass().mass() > 0) {
            dew(lines);
            effect.mass().lid().ifPresent(l -> lines.add("Of the " + Amounts.mass(l.margin())
                    + " that the lid's holder still bears, " + (l.sinks() ? "nothing is left: the lid will sink."
                    : Amounts.mass(l.left()) + " are left.")));
        }
        return lines;
    }

    /** Bays that change alike are told together. */
    private List<String> rings() {
        Map<String, List<String>> byWords = new LinkedHashMap<>();
        for (BayEffect bay : effect.bays()) {
            if (bay.treated()) {
                String words = bay.response().isWithin() ? ring(bay.response().value())
                        : "gain outside its range, since " + bay.response().reason();
                byWords.computeIfAbsent(words, w -> new ArrayList<>()).add(sentences.place(bay.place()));
            }
        }
        return byWords.entrySet().stream()
                .map(e -> English.capital(English.andNumbered(e.getValue())) + ": " + e.getKey() + ".").toList();
    }

    private static String ring(BayEffect.Response r) {
        return "at the own note quieter by " + decibels(r.room().quieter()) + " in the workshop, about "
                + Math.round(r.winter().quieter().about()) + " dB at " + celsius(r.winter().temperature()) + " and "
                + Math.round(r.peak().quieter().about()) + " dB at " + celsius(r.peak().temperature())
                + "; the note moves from " + hertz(r.toldBefore()) + " to " + hertz(r.toldAfter());
    }

    private String blocking() {
        List<String> bands = new ArrayList<>();
        List<String> outside = new ArrayList<>();
        for (Blocking b : effect.blocking()) {
            String band = Dimension.FREQUENCY.show(b.band().nominal());
            if (b.losses().isWithin()) {
                Blocking.Losses l = b.losses().value();
                bands.add("at " + band + " from " + Math.round(l.bare()) + " to " + Math.round(l.treated())
                        + " dB (give or take " + Math.round(l.uncertainty()) + ")");
            } else {
                outside.add(band);
            }
        }
        return "Holds back sound " + English.and(bands)
                + (outside.isEmpty() ? "" : "; " + English.and(outside) + " outside the formula's range") + ".";
    }

    /** Where a floated barrier holds back less than bare metal or than laid direct. */
    private void floated(List<String> lines) {
        List<Blocking> floated = effect.blocking().stream()
                .filter(b -> b.losses().isWithin() && b.losses().value().floated().isPresent()).toList();
        List<String> lost = new ArrayList<>();
        List<String> worse = new ArrayList<>();
        for (Blocking blocking : floated) {
            Blocking.Losses l = blocking.losses().value();
            String band = " at " + Dimension.FREQUENCY.show(blocking.band().nominal());
            addLess(l.floated().get().direct() - l.treated(), band, lost);
            addLess(-l.gain(), band, worse);
        }
        if (!lost.isEmpty()) {
            lines.add("Skin and barrier bounce on what lies between them at about "
                    + Dimension.FREQUENCY.show(floated.get(0).losses().value().floated().get().resonance())
                    + ", so the panel holds back less than with the barrier laid direct: " + English.and(lost)
                    + (worse.isEmpty() ? "." : "; and less than bare metal: " + English.and(worse) + "."));
        }
    }

    private static void addLess(double decibels, String band, List<String> less) {
        if (Math.round(decibels) > 0) {
            less.add(Math.round(decibels) + " dB" + band);
        }
    }

    private static void flow(String what, Estimate<HeatEffect.Flow> flow, List<String> lines) {
        if (flow.isWithin() && Math.round(flow.value().bare()) != Math.round(flow.value().treated())) {
            lines.add(what + ": from about " + Dimension.HEAT_FLOW.show(flow.value().bare()) + " to "
                    + Dimension.HEAT_FLOW.show(flow.value().treated()) + ", give or take "
                    + Amounts.share(flow.value().uncertainty()) + ".");
        }
    }

    private static String hot(Heated h) {
        return "Nearest to its limit at the peak: " + h.material().material() + ", " + celsius(h.face()) + " against "
                + celsius(h.bears()) + ".";
    }

    private void dew(List<String> lines) {
        if (effect.heat().dew().isWithin()) {
            HeatEffect.Dew d = effect.heat().dew().value();
            lines.add("Coldest face that room air meets: " + celsius(d.bare().coldest()) + " bare, "
                    + celsius(d.coldestCovered()) + " where the layers lie, dew point " + celsius(d.dewPoint()) + ".");
            Range hours = d.treated().hours();
            lines.add("Wet for about " + Amounts.share(d.bare().hours().about()) + " of the winter bare, about "
                    + Amounts.share(hours.about()) + " with the layers (" + Amounts.share(hours.low()) + " to "
                    + Amounts.share(hours.high()) + "), on average over the panel.");
        }
    }

    /** 'about 12 dB (8 to 17)'. */
    static String decibels(Range range) {
        return "about " + Math.round(range.about()) + " dB (" + Math.round(range.low()) + " to "
                + Math.round(range.high()) + ")";
    }

    private static String celsius(double celsius) {
        return Dimension.TEMPERATURE.show(celsius);
    }

    private static String hertz(Band band) {
        return Math.round(band.lower()) + "–" + Dimension.FREQUENCY.show(band.upper());
    }
}
