package unthrum.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Drains;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.built.BuiltPanel.Travel;
import unthrum.built.BuiltPanel.TrimBack;
import unthrum.built.Done;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Tap;

/** The job that does exactly what its plan says and shows all of it. */
public final class SoundJob {
    static final LocalDate DAY = LocalDate.of(2026, 3, 12);

    private SoundJob() {
    }

    public static Built of(Plan plan) {
        return new Built("survey.yaml", Optional.of(DAY), Optional.of("A. Fitter"), Optional.empty(),
                plan.panels().stream().map(SoundJob::panel).toList(), Optional.of(done(plan.duties(any -> true))),
                Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static BuiltPanel panel(PlannedPanel p) {
        List<String> closed = Stream.concat(p.advice().closings().stream().map(c -> c.opening().place()),
                p.advice().duties(l -> l != Layer.SEAL, true).stream().map(j -> (Duty) j.conclusion())
                        .filter(d -> d.work() == Work.CLOSE_HOLE).map(Duty::place)).map(Place::part).distinct().toList();
        return new BuiltPanel(p.name(), Optional.empty(), Optional.of(DAY), Optional.of(layers(p)),
                Optional.of(done(p.advice().duties(l -> true, true))),
                Optional.of(List.of(Tap.DEAD)), Optional.of(new TrimBack(TrimBack.Fit.FREELY,
                        Optional.of(new Quantity(0, Dimension.LENGTH)))), Optional.of(Travel.FREE),
                Optional.of(Drains.RUN), Optional.of(closed), Optional.of(List.of()), Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    private static List<FittedLayer> layers(PlannedPanel p) {
        List<FittedLayer> layers = new ArrayList<>();
        for (Laid laid : p.layup().layers()) {
            for (Patch patch : laid.patches()) {
                Optional<List<String>> at = patch.place().isWholePanel() ? Optional.empty()
                        : Optional.of(List.of(patch.place().part()));
                layers.add(layer(laid.material().material(), at, patch.coverage()));
            }
        }
        return layers;
    }

    static FittedLayer layer(String material, Optional<List<String>> at, double coverage) {
        return new FittedLayer(material, at, Optional.of(new Quantity(coverage, Dimension.SHARE)),
                Optional.of(List.of()), Optional.empty(), Optional.empty());
    }

    private static List<Done> done(List<Judgement> duties) {
        Set<Work> works = EnumSet.noneOf(Work.class);
        duties.forEach(j -> works.add(((Duty) j.conclusion()).work()));
        return works.stream().map(SoundJob::done).toList();
    }

    static Done done(Work work) {
        return new Done(List.of(work), Optional.empty(), Optional.empty(), Optional.of("0417.jpg"), Optional.empty(),
                Optional.of("A. Fitter"), Optional.of(DAY));
    }
}
