package unthrum.effect;

import java.util.Arrays;
import java.util.List;
import unthrum.derive.FloatedBarrier;
import unthrum.derive.MetalSheet;
import unthrum.derive.PanelFacts;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.physics.CompositeLoss;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Leaf;
import unthrum.physics.Partition;
import unthrum.physics.ThirdOctave;

/** What a skin with layers lets through, band by band. */
final class WallSound {

    private final Knowledge knowledge;
    private final Panel panel;

    WallSound(Knowledge knowledge, PanelFacts facts) {
        this.knowledge = knowledge;
        this.panel = facts.the(Panel.class);
    }

    double[] transmission(List<Material> layers) {
        Partition partition = partition(layers);
        return ThirdOctave.HEARD.stream()
                .mapToDouble(b -> CompositeLoss.transmission(partition.transmissionLoss(b.centre()))).toArray();
    }

    double[] uncertainty(List<Material> layers) {
        double[] u = new double[ThirdOctave.HEARD.size()];
        Arrays.fill(u, 4);
        return u;
    }

    double[] cover(List<Material> layers) {
        double[] c = new double[ThirdOctave.HEARD.size()];
        Arrays.fill(c, 1);
        if (partition(layers) instanceof DoubleLeaf floated) {
            for (int i = 0; i < c.length; i++) {
                double x = ThirdOctave.HEARD.get(i).centre() / floated.resonance();
                double eta = 0.15;
                c[i] = (1 + eta * eta) / (Math.pow(1 - x * x, 2) + eta * eta);
                c[i] = Math.max(c[i], 0.001);
            }
        }
        return c;
    }

    private Partition partition(List<Material> all) {
        int spring = -1;
        int barrier = -1;
        for (int i = 0; i < all.size(); i++) {
            spring = spring < 0 && all.get(i).layer() == Layer.DECOUPLER ? i : spring;
            barrier = barrier < 0 && all.get(i).layer() == Layer.BARRIER ? i : barrier;
        }
        if (spring < 0 || barrier < spring || all.get(spring).springModulus().isEmpty()) {
            return leaf(all);
        }
        return new DoubleLeaf(leaf(all.subList(0, spring + 1)),
                Leaf.limp(Stack.mass(all.subList(spring + 1, all.size()))),
                FloatedBarrier.spring(all.get(spring), knowledge));
    }

    private Leaf leaf(List<Material> layers) {
        return Leaf.stiff(panel.skinWeight() + Stack.mass(layers), MetalSheet.of(panel).flexuralRigidity(),
                knowledge.number("usual/bare-loss-factor"));
    }
}
