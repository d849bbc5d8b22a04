package unthrum.audit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import unthrum.Scenarios;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.built.Done;
import unthrum.built.Edit;
import unthrum.facts.Duty.Work;
import unthrum.material.Layer;
import unthrum.material.Material;

/** One thing on a panel done otherwise than the plan says. */
final class Change {
    private Change() {
    }

    static UnaryOperator<BuiltPanel> fitted(Material material) {
        return layer(material.layer(), l -> Edit.with(l, "material", material.material()));
    }

    static UnaryOperator<BuiltPanel> plus(FittedLayer layer) {
        return b -> Edit.with(b, "layers", Optional.of(Stream.concat(b.layers().orElseThrow().stream(),
                Stream.of(layer)).toList()));
    }

    /** Changes every piece of a kind of layer. */
    static UnaryOperator<BuiltPanel> layer(Layer layer, UnaryOperator<FittedLayer> edit) {
        return layers(l -> Scenarios.CATALOGUE.find(l.material()).orElseThrow().layer() == layer, edit);
    }

    /** Changes the piece nearest the metal. */
    static UnaryOperator<BuiltPanel> first(UnaryOperator<FittedLayer> edit) {
        return b -> Edit.with(b, "layers", Optional.of(Stream.concat(
                Stream.of(edit.apply(b.layers().orElseThrow().get(0))), b.layers().get().stream().skip(1)).toList()));
    }

    static UnaryOperator<BuiltPanel> layers(Predicate<FittedLayer> which, UnaryOperator<FittedLayer> edit) {
        return b -> Edit.with(b, "layers", Optional.of(b.layers().orElseThrow().stream()
                .map(l -> which.test(l) ? edit.apply(l) : l).toList()));
    }

    static FittedLayer over(FittedLayer layer, String part) {
        return Edit.with(layer, "over", Optional.of(List.of(part)));
    }

    static UnaryOperator<BuiltPanel> notDone(Work work) {
        return done(d -> Stream.of(d.work().contains(work) ? Edit.with(d, "done", Optional.of(false)) : d));
    }

    static UnaryOperator<BuiltPanel> without(Work work) {
        return done(d -> Stream.of(d).filter(x -> !x.work().contains(work)));
    }

    static UnaryOperator<BuiltPanel> done(Function<Done, Stream<Done>> edit) {
        return b -> Edit.with(b, "done", Optional.of(b.done().orElseThrow().stream().flatMap(edit).toList()));
    }
}
