package unthrum.material;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import unthrum.reading.Count;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.reading.Words;
import unthrum.reading.YamlReader;

/** Reads a catalogue and reports the properties of a material that cannot be true together. */
final class CatalogueReader {
    private static final List<String> PROPERTIES = Arrays.stream(Material.class.getRecordComponents())
            .map(component -> Words.key(component.getName())).toList();

    private final Places places;

    private CatalogueReader(Places places) {
        this.places = places;
    }

    /** The file as a whole. */
    record File(@Count(min = 1) List<Material> materials) {
    }

    static List<Material> read(Path file) {
        return YamlReader.read(file, File.class, CatalogueReader::check).materials();
    }

    static List<Material> read(String name, InputStream in) {
        return YamlReader.read(name, in, File.class, CatalogueReader::check).materials();
    }

    private static void check(File file, Places places) {
        if (file.materials() == null) {
            return;
        }
        CatalogueReader reader = new CatalogueReader(places);
        Map<String, String> first = new HashMap<>();
        for (int i = 0; i < file.materials().size(); i++) {
            String path = "materials[" + i + "]";
            if (file.materials().get(i) != null && places.sound(path)) {
                reader.name(file.materials().get(i).material(), path + ".material", first);
                reader.material(file.materials().get(i), path);
            }
        }
    }

    private void name(String name, String path, Map<String, String> first) {
        String earlier = first.putIfAbsent(name.toLowerCase(Locale.ROOT), path);
        if (earlier != null) {
            places.problem(path, "the material '" + name + "' again (first in line " + places.line(earlier) + ")",
                    "a name of its own for each material", "");
        }
    }

    private void material(Material material, String path) {
        if (material.layer() == Layer.ANY) {
            places.problem(path + ".layer", "the layer 'any'", "one kind of layer", "");
        }
        if (material.serviceFrom().si() >= material.serviceTo().si()) {
            places.problem(path + ".service to", "service to " + material.serviceTo(),
                    "more than the " + material.serviceFrom() + " that service begins at", "");
        }
        if (material.bonding().sticks() && material.bondsFrom().isEmpty()) {
            places.problem(path + ".bonding", "no 'bonds from' for a material that is "
                    + Words.of(material.bonding()), "the coldest surface on which its adhesive grabs", "add the key");
        }
        published(material, path + ".published");
        damping(material, path);
    }

    private void published(Material material, String path) {
        for (String property : material.published().keySet()) {
            if (!PROPERTIES.contains(property)) {
                places.problem(path, "no property '" + property + "'", "the key of a property of the material",
                        Nearest.remedy(property, PROPERTIES));
            }
        }
    }

    private void damping(Material material, String path) {
        if (material.layer() == Layer.DAMPING != material.damping().isPresent()) {
            String has = material.damping().isPresent() ? "damping data" : "no damping data";
            places.problem(path, has + " for a material of the layer '" + material.layer().word() + "'",
                    "damping data for damping sheets, and only for them", "");
        }
        material.damping().ifPresent(data -> {
            if (data.facing().si() >= material.thickness().si()) {
                places.problem(path + ".damping.facing", "a facing of " + data.facing(),
                        "less than the whole sheet of " + material.thickness(), "");
            }
            for (int i = 1; i < data.points().size(); i++) {
                if (data.points().get(i).temperature().si() <= data.points().get(i - 1).temperature().si()) {
                    places.problem(path + ".damping.points[" + i + "].temperature",
                            "the temperature " + data.points().get(i).temperature(),
                            "more than the " + data.points().get(i - 1).temperature() + " before it", "");
                }
            }
        });
    }
}
