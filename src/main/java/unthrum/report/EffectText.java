package unthrum.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import unthrum.effect.AimGain;
import unthrum.effect.AimGain.DrierFaces;
import unthrum.effect.AimGain.Gain;
import unthrum.effect.AimGain.LessHeat;
import unthrum.effect.AimGain.LessSound;
import unthrum.effect.Range;
import unthrum.effect.Effects;
import unthrum.effect.VehicleEffect;
import unthrum.effect.VehicleEffect.Load;
import unthrum.reading.Dimension;
import unthrum.reading.Words;

/** What a plan brings the vehicle, aim by aim, and where the next money goes. Never a level in the cabin. */
final class EffectText {

    private static final int LABELS = 14;

    /** As many of each kind as a reader takes in. */
    private static final int FEW = 3;

    /** Less of the bare vehicle's than this reads as nothing. */
    private static final double LEAST = 0.0005;

    private final VehicleEffect effect;

    EffectText(Effects effects) {
        this.effect = effects.vehicle();
    }

    void print(Page page) {
        page.heading("What it brings");
        Entries entries = new Entries();
        for (AimGain aim : effect.gains()) {
            told(aim).forEach(line -> entries.add(Words.of(aim.aim()), line));
        }
        together().ifPresent(line -> entries.add("together", line));
        effect.next().stream().limit(FEW).forEach(n -> entries.add("next", English.capital(Words.of(n.aim())) + ": "
                + n.panel() + " now gives " + Amounts.share(n.share()) + " of what is left"
                + (n.treated() ? "" : ", and it is bare") + "."));
        entries.add("enough", "A kilogram more must take " + GainWords.share(effect.least().kilogram())
                + " and a unit of money more " + GainWords.share(effect.least().money()) + " " + GainWords.ALL
                + "; what takes less is left out.");
        entries.add("mass", load(effect.load()));
        entries.print(page, 0, LABELS);
        page.paragraph(0, "Computed for the surveyed panels alone; what comes another way stays, so none of this is a "
                + "level in the cabin. Measure before and after.");
        page.blank();
    }

    /** All aims in one figure, and what each counts in it. */
    private Optional<String> together() {
        List<AimGain> counted = effect.gains().stream().filter(g -> g.taken().isWithin() && g.weight() > 0).toList();
        if (counted.size() < 2) {
            return Optional.empty();
        }
        double taken = counted.stream().mapToDouble(g -> g.weight() * g.taken().value().about()).sum();
        return Optional.of(GainWords.share(taken) + " " + GainWords.ALL + ": " + English.and(counted.stream()
                .map(g -> Words.of(g.aim()) + " counts " + Amounts.share(g.weight())).toList()) + ".");
    }

    private static List<String> told(AimGain aim) {
        if (!aim.taken().isWithin()) {
            return List.of(English.sentence("no number: " + aim.taken().reason()));
        }
        List<String> lines = new ArrayList<>();
        Range taken = aim.taken().value();
        lines.add(Math.abs(taken.about()) < LEAST ? "Nothing that could be told." : "The layers take "
                + GainWords.share(taken.about()) + " of what the bare vehicle " + verb(aim)
                + " (" + GainWords.share(taken.low()) + " to " + GainWords.share(taken.high()) + ")." + most(aim));
        aim.gains().stream().map(EffectText::told).filter(line -> !line.isEmpty()).forEach(lines::add);
        return lines;
    }

    private static String verb(AimGain aim) {
        return aim.gains().stream().anyMatch(LessSound.class::isInstance) ? "gives off" : "lets through";
    }

    /** The panels that bring most of it. */
    private static String most(AimGain aim) {
        List<String> panels = aim.panels().stream().filter(p -> p.taken().about() >= LEAST)
                .sorted(Comparator.comparingDouble(p -> -p.taken().about())).limit(FEW)
                .map(p -> p.panel() + " " + GainWords.share(p.taken().about())).toList();
        return panels.isEmpty() ? "" : " Most of it: " + English.and(panels) + ".";
    }

    private static String told(Gain gain) {
        if (gain instanceof LessSound sound) {
            return Math.abs(sound.taken().about()) < LEAST ? "" : (sound.shaken() ? "From the shaken shell: " : "Through the air: ")
                    + GainWords.share(sound.taken().about()) + " less, which is "
                    + decibels(sound.taken()) + ".";
        }
        if (gain instanceof LessHeat heat) {
            return "From about " + Math.round(heat.wattsBefore()) + " W to " + Math.round(heat.wattsAfter())
                    + " W, give or take " + Amounts.share(heat.uncertainty()) + without(heat.outside()) + ".";
        }
        DrierFaces faces = (DrierFaces) gain;
        return "Area that can get wet: " + Amounts.area(faces.wetBefore()) + " bare, " + Amounts.area(faces.wetAfter())
                + " as planned; on average " + kelvins(faces.depthBefore()) + " and " + kelvins(faces.depthAfter())
                + " degrees below the dew point; coldest is " + faces.worstPanel() + ".";
    }

    private static String decibels(Range taken) {
        return PanelEffectText.decibels(new Range(fall(taken.low()), fall(taken.about()), fall(taken.high())));
    }

    /** The fall of a level by a share of its power, dB. */
    private static double fall(double share) {
        return -10 * Math.log10(Math.max(1 - share, 1e-3));
    }

    private static String kelvins(double kelvins) {
        return String.format(java.util.Locale.ROOT, "%.1f", kelvins);
    }

    private static String without(List<String> outside) {
        return outside.isEmpty() ? "" : "; " + English.count(outside.size(), "panel") + " left out";
    }

    private static String load(Load load) {
        StringBuilder words = new StringBuilder(Amounts.mass(load.mass())).append(" added");
        load.height().ifPresent(h -> words.append(", its centre about ")
                .append(String.format(java.util.Locale.ROOT, "%.1f m", h)).append(" above the ground"));
        load.payload().ifPresent(p -> words.append(", ").append(Amounts.share(p)).append(" of the payload left"));
        return words.append(".").toString();
    }
}
