package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.DampingData;

@DisplayName("The usual damping sheet of the rules")
class UsualDampingNumbersTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final Catalogue CATALOGUE = Catalogue.load();

    @Test
    @DisplayName("is the catalogue's usual one, butyl-2, at room temperature and its data's frequency")
    void usual() {
        Material usual = CATALOGUE.find("butyl-2").orElseThrow();
        DampingData data = usual.damping().orElseThrow();
        DampingData.Point room = data.points().stream()
                .filter(p -> p.temperature().si() == KNOWLEDGE.number("usual/room-temperature")).findFirst().orElseThrow();
        assertThat(KNOWLEDGE.number("usual/damping-shear-modulus")).isEqualTo(room.shearModulus().si());
        assertThat(KNOWLEDGE.number("usual/damping-loss-factor")).isEqualTo(room.lossFactor().si());
        assertThat(KNOWLEDGE.number("usual/damping-facing")).isEqualTo(data.facing().si());
        assertThat(KNOWLEDGE.number("usual/damping-thickness"))
                .isCloseTo(usual.thickness().si() - data.facing().si(), within(1e-9));
    }

    @Test
    @DisplayName("every damping sheet says where its shift comes from: a source of the rules, or memory")
    void sources() {
        assertThat(CATALOGUE.of(Layer.DAMPING).stream()
                .map(m -> m.damping().orElseThrow().shift().source()))
                .allSatisfy(source -> assertThat(source.equals("from-memory") || source.equals("common-practice")
                        || KNOWLEDGE.sources().stream().anyMatch(s -> s.source().equals(source))).isTrue());
    }
}
