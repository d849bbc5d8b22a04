package unthrum.effect;

import java.util.Optional;
import unthrum.derive.BayModes;
import unthrum.derive.MetalSheet;
import unthrum.derive.PanelFacts;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Coverage;
import unthrum.physics.Excitation;
import unthrum.physics.Support;
import unthrum.physics.ThirdOctave;

/** Sound power that a bay gives off. */
final class BayPower {

    private final Panel panel;
    private final PanelFacts facts;

    BayPower(Knowledge knowledge, PanelFacts facts) {
        this.panel = facts.the(Panel.class);
        this.facts = facts;
    }

    double[] bare(Bay bay, double bareLossFactor) {
        return treated(bay, Optional.empty(), 0, 0, 20, bareLossFactor);
    }

    double[] treated(Bay bay, Optional<DampingSheet> damping, double coverage, double otherMass, double celsius,
                     double bareLossFactor) {
        BayModes modes = facts.modes(bay.place()).orElseThrow();
        double[] power = new double[ThirdOctave.HEARD.size()];
        double share = damping.isEmpty() ? 0 : Coverage.of(MetalSheet.of(panel).skin(), modes.shape(),
                Support.HINGED_SLIDING).value().share(coverage);
        for (int i = 0; i < power.length; i++) {
            ThirdOctave third = ThirdOctave.HEARD.get(i);
            double loss = bareLossFactor + damping.map(d -> share
                    * d.on(panel, celsius, third.centre()).lossFactor()).orElse(0.0);
            double mass = panel.skinWeight() + otherMass
                    + damping.map(d -> coverage * d.material().surfaceDensity().si()).orElse(0.0);
            double count = Excitation.expectedModes(MetalSheet.of(panel).skin(), modes.shape(),
                    new Band(third.lowerEdge(), third.upperEdge()));
            power[i] = count / (mass * loss);
        }
        return power;
    }
}
