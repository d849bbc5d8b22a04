package unthrum.reasoning;

import java.util.Comparator;
import java.util.List;
import unthrum.effect.DampingSheet;
import unthrum.facts.Bay;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.derive.FloatedBarrier;
import unthrum.derive.PanelFacts;

/**
 * How much of what its want asks for a material delivers, from 0 to 1 where enough is enough: loss factor for damping,
 * mass per area for a barrier, thermal resistance for insulation, depth for a decoupler or absorber. Coarse steps, so
 * that a shade better never outweighs lighter and cheaper.
 */
final class Merit {

    private static final double STEP = 0.05;

    private final Knowledge knowledge;
    private final Panel panel;
    private final double peak;
    private final double frequency;

    Merit(Knowledge knowledge, PanelFacts facts) {
        this.knowledge = knowledge;
        this.panel = facts.the(Panel.class);
        this.peak = facts.the(Heat.class).peak();
        List<Bay> bays = facts.all(Bay.class).filter(b -> Double.isFinite(b.lowest())).toList();
        this.frequency = bays.stream().max(Comparator.comparingDouble(Bay::drive)).map(Bay::lowest)
                .orElse(knowledge.number("usual/panel-frequency"));
    }

    /** In 20 steps from just above 0 to 1. */
    double of(Material material) {
        double share = of(material.layer(), material);
        return Math.max(STEP, Math.round(Math.min(share, 1) / STEP) * STEP);
    }

    private double of(Layer layer, Material material) {
        return switch (layer) {
            case DAMPING -> damping(material) / knowledge.number("enough/loss-factor");
            case BARRIER -> material.surfaceDensity().si() / knowledge.number("enough/barrier-weight");
            case DECOUPLER -> gain(material) / knowledge.number("enough/decoupler-gain");
            case INSULATION -> material.thermalResistance() / knowledge.number("enough/insulation");
            case ABSORBER -> material.thickness().si() / knowledge.number("enough/absorber-depth");
            case HEAT_SHIELD, WEAR_FACE, SEAL, ANY -> 1;
        };
    }

    /** What a barrier gains by floating on this foam, dB. */
    double gain(Material foam) {
        return new FloatedBarrier(panel.skinWeight(), FloatedBarrier.spring(foam, knowledge), knowledge).gain();
    }

    /** Mean of the composite loss factor at room temperature and at the place's peak. */
    private double damping(Material material) {
        DampingSheet sheet = new DampingSheet(material, knowledge.number("usual/facing-density"));
        double usual = sheet.on(panel, knowledge.number("usual/room-temperature"), frequency).lossFactor();
        double hot = sheet.on(panel, peak, frequency).lossFactor();
        return (usual + hot) / 2;
    }
}
