package unthrum.report;

import java.util.List;
import unthrum.effect.AimGain;
import unthrum.effect.AimGain.BetterWalls;
import unthrum.effect.AimGain.CalmerBays;
import unthrum.effect.AimGain.DrierFaces;
import unthrum.effect.AimGain.Gain;
import unthrum.effect.AimGain.LessHeat;
import unthrum.effect.Blocking.Paths;
import unthrum.effect.Effects;
import unthrum.effect.VehicleEffect;
import unthrum.effect.VehicleEffect.Load;
import unthrum.physics.Estimate;
import unthrum.reading.Dimension;
import unthrum.reading.Words;

/** What a plan brings the vehicle, aim by aim, and where the next money goes. Never a level in the cabin. */
final class EffectText {

    private static final int LABELS = 14;

    private final VehicleEffect effect;

    EffectText(Effects effects) {
        this.effect = effects.vehicle();
    }

    void print(Page page) {
        page.heading("What it brings");
        Entries entries = new Entries();
        for (AimGain aim : effect.gains()) {
            aim.gains().forEach(g -> entries.add(Words.of(aim.aim()), told(g)));
        }
        effect.loudestBay().ifPresent(b -> entries.add("next", "Ringing: " + b.place() + " now gives "
                + Amounts.share(b.share()) + " of what is left" + (b.treated() ? "" : ", and it is bare") + "."));
        effect.weakestWall().ifPresent(w -> entries.add("next", "Airborne sound: most now passes through " + w.panel()
                + ", " + Amounts.share(w.share()) + " of all beside a source at "
                + Dimension.FREQUENCY.show(w.band().nominal()) + ", and there through " + path(w.paths()) + "."));
        entries.add("mass", load(effect.load()));
        entries.print(page, 0, LABELS);
        page.paragraph(0, "Computed for the surveyed panels alone; what comes another way stays, so none of this is a "
                + "level in the cabin. Measure before and after.");
        page.blank();
    }

    private static String told(Estimate<? extends Gain> gain) {
        if (!gain.isWithin()) {
            return English.sentence("no number: " + gain.reason());
        }
        Gain value = gain.value();
        if (value instanceof CalmerBays bays) {
            return calmer(bays);
        }
        if (value instanceof BetterWalls walls) {
            return "Panels beside the source hold back " + Math.round(walls.before()) + " dB bare and "
                    + Math.round(walls.after()) + " dB as planned at " + Dimension.FREQUENCY.show(walls.band().nominal())
                    + ", give or take " + Math.round(walls.uncertainty()) + without(walls.outside()) + ".";
        }
        if (value instanceof LessHeat heat) {
            return "From about " + Math.round(heat.wattsBefore()) + " W to " + Math.round(heat.wattsAfter())
                    + " W, within " + Amounts.share(heat.uncertainty()) + without(heat.outside()) + ".";
        }
        DrierFaces faces = (DrierFaces) value;
        return "Area that can get wet: " + Amounts.area(faces.wetBefore()) + " bare, " + Amounts.area(faces.wetAfter())
                + " as planned; on average " + kelvins(faces.depthBefore()) + " and " + kelvins(faces.depthAfter())
                + " degrees below the dew point; coldest is " + faces.worstPanel() + ".";
    }

    private static String kelvins(double kelvins) {
        return String.format(java.util.Locale.ROOT, "%.1f", kelvins);
    }

    private static String calmer(CalmerBays bays) {
        if (bays.treatedShare() == 0) {
            return "Ringing: no driven bay is treated.";
        }
        return "Ringing: " + Amounts.share(bays.treatedShare()) + " of the drive meets treated bays, which fall by "
                + PanelEffectText.decibels(bays.treatedBays()) + "; all bays together by "
                + PanelEffectText.decibels(bays.allBays())
                + (bays.unknownShare() > 0 ? "; " + Amounts.share(bays.unknownShare()) + " cannot be told" : "") + ".";
    }

    private static String without(List<String> outside) {
        return outside.isEmpty() ? "" : "; " + English.count(outside.size(), "panel") + " left out";
    }

    private static String path(Paths paths) {
        if (paths.holes() >= Math.max(paths.withoutBarrier(), paths.barrier())) {
            return "its open holes";
        }
        return paths.withoutBarrier() >= paths.barrier() ? "the metal without a barrier" : "its barrier";
    }

    private static String load(Load load) {
        StringBuilder words = new StringBuilder(Amounts.mass(load.mass())).append(" added");
        load.height().ifPresent(h -> words.append(", its centre about ")
                .append(String.format(java.util.Locale.ROOT, "%.1f m", h)).append(" above the ground"));
        load.payload().ifPresent(p -> words.append(", ").append(Amounts.share(p)).append(" of the payload left"));
        return words.append(".").toString();
    }
}
