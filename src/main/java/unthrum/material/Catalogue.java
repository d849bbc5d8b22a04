package unthrum.material;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.reading.Nearest;
import unthrum.reading.Places;

/** The materials that a plan may choose from, in the order of their file. */
public final class Catalogue {
    private static final String RESOURCE = "unthrum/rules/materials.yaml";

    private final Map<String, Material> byName = new LinkedHashMap<>();

    private Catalogue(List<Material> materials) {
        materials.forEach(material -> byName.put(material.material(), material));
    }

    /** The catalogue that comes with the program. */
    public static Catalogue load() {
        InputStream in = Catalogue.class.getClassLoader().getResourceAsStream(RESOURCE);
        return new Catalogue(CatalogueReader.read("rules/materials.yaml", in));
    }

    /** A shop's own catalogue, or all {@link unthrum.reading.Problems} of its file at once. */
    public static Catalogue of(Path file) {
        return new Catalogue(CatalogueReader.read(file));
    }

    public List<Material> all() {
        return List.copyOf(byName.values());
    }

    /** The currency of all its prices. */
    public String currency() {
        return byName.values().iterator().next().price().currency();
    }

    /** The materials of one kind. */
    public List<Material> of(Layer layer) {
        return byName.values().stream().filter(material -> material.layer() == layer).toList();
    }

    public Optional<Material> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The material of that name; where there is none, a problem at the path with the nearest name. */
    public Optional<Material> find(String name, String path, Places places) {
        Optional<Material> found = find(name);
        if (found.isEmpty()) {
            places.problem(path, "no material '" + name + "' in the catalogue", "the name of a material in it",
                    Nearest.remedy(name, byName.keySet()));
        }
        return found;
    }
}
