package unthrum.derive;

import java.util.List;
import unthrum.facts.Bay;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Damping;
import unthrum.physics.Decay;
import unthrum.reading.Quantity;
import unthrum.survey.PanelEntry;

/** What the survey measured of how a panel's bare bays die away. */
record MeasuredDecay(Knowledge knowledge, PanelEntry entry) {

    /** The bay as measured, or as it was. */
    Bay on(Bay bay) {
        return entry.decay().orElse(List.of()).stream().filter(d -> d.bay() == bay.number()).findFirst()
                .map(d -> measured(bay, d)).orElse(bay);
    }

    private Bay measured(Bay bay, PanelEntry.Decay decay) {
        double note = decay.at().map(Quantity::si).orElse(Double.NaN);
        double lossFactor = decay.lossFactor().map(Quantity::si)
                .orElseGet(() -> Decay.lossFactor(note, decay.time().orElseThrow().si()));
        return bay.measured(lossFactor, note, gain(bay.gain(), lossFactor));
    }

    /** A gain that was told for the usual bare loss factor, told for another. */
    private double gain(double usual, double lossFactor) {
        double added = knowledge.number("usual/bare-loss-factor") * (Math.pow(10, usual / 20) - 1);
        return Damping.levelReduction(lossFactor, lossFactor + added);
    }
}
