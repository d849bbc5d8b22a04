package unthrum.derive;

import unthrum.knowledge.Knowledge;
import unthrum.physics.Damping;
import unthrum.physics.Mode;
import unthrum.physics.Sheet;
import unthrum.physics.Viscoelastic;

/** The damping sheet that a fitter usually has at hand, for judging a bay before any material is chosen. */
record UsualDamping(Knowledge knowledge) {

    Damping.Composite on(Sheet skin, Mode mode) {
        Viscoelastic core = new Viscoelastic(knowledge.number("usual/damping-shear-modulus"),
                knowledge.number("usual/damping-loss-factor"));
        return Damping.constrained(skin, core, knowledge.number("usual/damping-thickness"),
                Sheet.aluminium(knowledge.number("usual/damping-facing")),
                Damping.waveNumberSquared(skin.skin(), mode));
    }
}
