package unthrum.effect;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import unthrum.effect.AimGain.BetterWalls;
import unthrum.effect.VehicleEffect.WeakestWall;
import unthrum.effect.VehicleEffects.Known;
import unthrum.physics.CompositeLoss;
import unthrum.physics.Estimate;
import unthrum.physics.ThirdOctave;

/** Panels beside a source as one wall in a band; those for which the loss cannot be told are left out and named. */
record Walls(ThirdOctave band, List<Known> told, List<String> outside) {

    static Walls of(List<Known> panels, ThirdOctave band) {
        return new Walls(band, panels.stream().filter(p -> losses(p, band).isWithin()).toList(),
                panels.stream().filter(p -> !losses(p, band).isWithin()).map(Known::name).toList());
    }

    static Estimate<Blocking.Losses> losses(Known panel, ThirdOctave band) {
        return panel.effect().blocking().stream().filter(b -> b.band() == band).findFirst().orElseThrow().losses();
    }

    Optional<BetterWalls> better() {
        if (told.isEmpty()) {
            return Optional.empty();
        }
        double uncertainty = told.stream().mapToDouble(p -> losses(p, band).value().uncertainty()).max().orElseThrow();
        return Optional.of(new BetterWalls(band, CompositeLoss.of(areas(), losses(Blocking.Losses::bare)),
                CompositeLoss.of(areas(), losses(Blocking.Losses::treated)), uncertainty, outside));
    }

    WeakestWall weakest() {
        double[] losses = losses(Blocking.Losses::treated);
        int weakest = CompositeLoss.weakest(areas(), losses);
        double all = 0;
        for (int i = 0; i < losses.length; i++) {
            all += passed(i, losses);
        }
        return new WeakestWall(told.get(weakest).name(), band, passed(weakest, losses) / all, losses[weakest],
                losses(told.get(weakest), band).value().paths());
    }

    private double passed(int i, double[] losses) {
        return areas()[i] * CompositeLoss.transmission(losses[i]);
    }

    private double[] areas() {
        return told.stream().mapToDouble(p -> p.panel().area()).toArray();
    }

    private double[] losses(ToDoubleFunction<Blocking.Losses> which) {
        return told.stream().mapToDouble(p -> which.applyAsDouble(losses(p, band).value())).toArray();
    }
}
