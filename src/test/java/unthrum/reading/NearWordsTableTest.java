package unthrum.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.built.Built;
import unthrum.material.Material;
import unthrum.survey.Survey;

@DisplayName("The table of other words for the files' own")
class NearWordsTableTest {
    /** The words that may stand in one place, place by place. */
    private static final List<List<String>> PLACES = new ArrayList<>();

    @BeforeAll
    static void collect() {
        Set<Class<?>> seen = new HashSet<>();
        List.of(Survey.class, Built.class, Material.class).forEach(type -> collect(type, seen));
    }

    private static void collect(Type type, Set<Class<?>> seen) {
        if (type instanceof ParameterizedType generic) {
            List.of(generic.getActualTypeArguments()).forEach(inner -> collect(inner, seen));
        } else if (type instanceof Class<?> raw && seen.add(raw)) {
            if (raw.isEnum()) {
                PLACES.add(Words.all(raw));
            } else if (raw.isRecord() && !ScalarBinder.reads(raw)) {
                PLACES.add(RecordShape.of(raw).keys());
                RecordShape.of(raw).fields().forEach(field -> collect(field.type(), seen));
            }
        }
    }

    @Test
    @DisplayName("names nothing twice")
    void once() {
        assertThat(NearWords.table().words().stream().flatMap(e -> e.said().stream()).map(Nearest::plain).toList())
                .doesNotHaveDuplicates();
    }

    @Test
    @DisplayName("gives only words that help somewhere: known there, where what was said is not")
    void everyWordHelps() {
        List<String> idle = new ArrayList<>();
        for (NearWords.Entry entry : NearWords.table().words()) {
            for (String word : entry.write()) {
                entry.said().stream().filter(said -> !helps(said, word)).forEach(said -> idle.add(said + ": " + word));
            }
        }
        assertThat(idle).isEmpty();
    }

    private static boolean helps(String said, String word) {
        return PLACES.stream().anyMatch(place -> place.contains(word)
                && place.stream().noneMatch(known -> Nearest.plain(known).equals(Nearest.plain(said))));
    }

    @Test
    @DisplayName("is not asked where a slip of the pen explains the word")
    void slips() {
        assertThat(Nearest.remedy("Heat-Shield", List.of("heat shield", "seal"))).isEqualTo("did you mean 'heat shield'?");
        assertThat(Nearest.remedy("GROUND", List.of("earth point", "ground"))).isEqualTo("did you mean 'ground'?");
        assertThat(Nearest.remedy("GROUND", List.of("earth point"))).isEqualTo("write 'earth point'");
    }

    @Test
    @DisplayName("is helped by parts of words, unless too many hold them")
    void parts() {
        assertThat(Nearest.remedy("roof", List.of("roof-front", "roof-rear", "door"))).isEqualTo(
                "did you mean 'roof-front' or 'roof-rear'?");
        assertThat(Nearest.remedy("bay", List.of("bay 1", "bay 2", "bay 3", "bay 4", "bay 5"))).isEmpty();
        assertThat(Nearest.remedy("rear wheel arch", List.of("wheel arch", "tailgate"))).isEqualTo(
                "did you mean 'wheel arch'?");
        assertThat(Nearest.remedy("eat", List.of("seat bolt"))).isEmpty();
    }
}
