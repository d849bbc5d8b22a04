package unthrum.material;

import java.util.Comparator;
import java.util.List;

/** Orders materials by what can be weighed, measured and paid, so that no choice hangs on how a shop names them. */
public final class Figures {

    /** The cheaper by area, the lighter, the thinner first; names only part what is alike in every figure. */
    public static final Comparator<Material> ORDER = Comparator.comparing(Material::layer)
            .thenComparing(m -> m.price().amount().doubleValue() / m.packArea())
            .thenComparing(m -> m.surfaceDensity().si()).thenComparing(m -> m.thickness().si())
            .thenComparing(Material::packArea).thenComparing(m -> others(m).toString()).thenComparing(Material::material);

    private Figures() {
    }

    private static List<Object> others(Material m) {
        return List.of(m.price(), m.inPack(), m.size(), m.form(), m.serviceFrom(), m.serviceTo(), m.bondsFrom(), m.cell(),
                m.burnRate(), m.bonding(), m.removable(), m.conductivity(), m.emissivity(), m.bearsWear(), m.runsOneWay(),
                m.closes(), m.springModulus(), m.damping());
    }
}
