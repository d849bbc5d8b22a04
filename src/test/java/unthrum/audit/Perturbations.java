package unthrum.audit;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import unthrum.built.BuiltPanel;
import unthrum.built.Edit;
import unthrum.material.Layer;
import unthrum.effect.Laid;
import unthrum.reasoning.engine.Judgement;

/** Makes perturbations of one panel of a sound job, and asks the oracle what each justifies. */
abstract class Perturbations {
    final Oracle oracle;
    final BuiltPanel sound;
    final List<Laid> laid;
    private final Random random;

    Perturbations(Oracle oracle, BuiltPanel sound, Random random) {
        this.oracle = oracle;
        this.sound = sound;
        this.random = random;
        this.laid = oracle.panel.layup().layers();
    }

    /** Empty where the panel gives no occasion for it. */
    static Optional<Perturbation> of(Perturbation.Kind kind, Oracle oracle, BuiltPanel sound, Random random) {
        return kind.isAboutLayers() ? new LayerPerturbations(oracle, sound, random).of(kind)
                : new WorkPerturbations(oracle, sound, random).of(kind);
    }

    final <T> Optional<T> any(List<T> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    final Perturbation with(String component, Object value, List<Expected> expected) {
        return new Perturbation(Edit.with(sound, component, Optional.of(value)), expected);
    }

    final Set<Layer> layers() {
        return laid.stream().map(Laid::layer).collect(Collectors.toSet());
    }

    final List<Judgement> due(Predicate<Judgement> which) {
        return oracle.due(layers()).stream().filter(which).toList();
    }
}
