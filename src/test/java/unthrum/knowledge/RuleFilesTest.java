package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.material.Catalogue;
import unthrum.material.Material;

@DisplayName("The rule files")
class RuleFilesTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final List<RuleText> RULES = RuleText.shipped();
    private static final RuleFaults FAULTS = new RuleFaults(sources(), thresholds(), materials());

    private static Set<String> sources() {
        Set<String> keys = new HashSet<>(Source.MARKS);
        KNOWLEDGE.sources().forEach(s -> keys.add(s.source()));
        return keys;
    }

    private static Set<String> thresholds() {
        return KNOWLEDGE.thresholds().stream().map(ThresholdEntry::threshold).collect(Collectors.toSet());
    }

    private static Set<String> materials() {
        return Catalogue.load().all().stream().map(Material::material).collect(Collectors.toSet());
    }

    @Nested
    @DisplayName("as shipped")
    class Shipped {
        @Test
        @DisplayName("keep to the language and the marks of the rule base, every rule of them")
        void noFaults() {
            assertThat(RULES.stream().flatMap(r -> FAULTS.of(r).stream()).toList()).isEmpty();
        }

        @Test
        @DisplayName("hold what the compiler compiled: the same ids, each once, and each sentence once")
        void ids() {
            List<String> ids = RULES.stream().map(RuleText::id).toList();
            assertThat(ids).doesNotHaveDuplicates()
                    .containsExactlyInAnyOrderElementsOf(KNOWLEDGE.cards().stream().map(RuleCard::id).toList());
            assertThat(RULES).extracting(RuleText::name).doesNotHaveDuplicates();
        }

        @Test
        @DisplayName("hold at least ninety rules over every subject of the trade")
        void subjects() {
            assertThat(RULES).hasSizeGreaterThanOrEqualTo(90);
            assertThat(RULES.stream().map(RuleText::subject).collect(Collectors.toSet())).contains("diagnosis",
                    "damping", "decoupling", "barrier", "insulation", "heat", "sealing", "fit", "fixing", "access",
                    "preparation", "moisture", "leak", "wear", "safety", "proof");
        }

        @Test
        @DisplayName("say no two things alike: neither the same sentence of teaching nor the same reason")
        void nothingTwice() {
            assertThat(RULES.stream().map(r -> r.marks().get("teaches")).toList()).doesNotHaveDuplicates();
            assertThat(RULES.stream().map(r -> r.concludes() + " when " + r.conditions()).toList()
                    .stream().filter(s -> s.contains("Want]") || s.contains("Veto]")).toList())
                    .doesNotHaveDuplicates();
        }

        @Test
        @DisplayName("open with a paragraph that a fitter can read, before any import")
        void paragraphs() throws IOException {
            for (Path file : RuleText.files()) {
                String head = Files.readString(file).split("import ")[0];
                assertThat(head.lines().filter(l -> l.startsWith("// ")).collect(Collectors.joining(" ")).length())
                        .as(file.toString()).isGreaterThan(150);
            }
        }
    }

    @Nested
    @DisplayName("with a mistake in them")
    class Mistaken {
        private static final String SOUND = """
                package unthrum.rules

                // A sound rule, for breaking.

                import unthrum.facts.*;

                rule "A bay that rings close to an ear wants damping"
                @id("damping/ring")
                @pattern("a reason and no counter-reason")
                @standing("physics")
                @weight("fair")
                @source("common-practice")
                @because("{bay} rings and spans {bay.span}, more than {span}")
                @teaches("A long note means that the metal keeps its movement for a while.")
                when
                    $span : Threshold(id == "damping/short-span")
                    $bay : Bay(tap == Tap.RINGS, span > $span.value)
                    not Setting(panel == $bay.panel, assumed contains "nearEar")
                then
                    insertLogical(new Want($bay.place(), Layer.DAMPING));
                end
                """;

        @Test
        @DisplayName("the sound rule itself has no fault")
        void sound() {
            assertThat(FAULTS.of(RuleText.of("damping", SOUND).get(0))).isEmpty();
        }

        @ParameterizedTest(name = "{0} → {1} is found")
        @CsvSource(delimiter = '¦', quoteCharacter = '~', textBlock = """
                @source("common-practice")            ¦                                     ¦ no @source
                @teaches("A long                      ¦ @tells("A long                      ¦ no @teaches
                @because("{bay}                       ¦ @because("{bay}\\\\                 ¦ no @because
                @weight("fair")                       ¦                                     ¦ @weight belongs
                @weight("fair")                       ¦ @advice("Damp this bay well enough") ¦ @advice belongs
                @weight("fair")                       ¦ @salience("9")                      ¦ unknown @salience
                @weight("fair")                       ¦ salience 9                          ¦ stray line
                @standing("physics")                  ¦ no-loop                             ¦ stray line
                @id("damping/ring")                   ¦ @id("fit/ring")                     ¦ the id is not
                "common-practice"                     ¦ "hearsay"                           ¦ unknown source
                a reason and no counter-reason        ¦ never here                          ¦ does not conclude a Want
                span > $span.value                    ¦ span > 0.25                         ¦ naked number
                span > $span.value                    ¦ span * 2 > $span.value              ¦ condition not allowed
                span > $span.value                    ¦ eval(true)                          ¦ condition not allowed
                tap == Tap.RINGS                      ¦ tap == Tap.RINGS || span > $span.value ¦ condition not allowed
                not Setting(                          ¦ not (Setting(                       ¦ condition not allowed
                $bay : Bay(tap == Tap.RINGS, span > $span.value) ¦ $bay : Bay() from $span  ¦ condition not allowed
                not Setting                           ¦ accumulate Setting                  ¦ condition not allowed
                "damping/short-span"                  ¦ "damping/long-span"                 ¦ no such threshold
                "nearEar"                             ¦ "nearEye"                           ¦ can be assumed
                insertLogical(                        ¦ insert(                             ¦ consequence not allowed
                insertLogical(new Want(               ¦ modify($bay); insertLogical(new Want( ¦ consequence not allowed
                Layer.DAMPING));                      ¦ Layer.DAMPING, 3));                 ¦ naked number
                Layer.DAMPING));                      ¦ Layer.DAMPING, $bay.span() - $bay.area())); ¦ computes with something else
                Layer.DAMPING));                      ¦ Layer.DAMPING, $span.value() - $bay.span())); ¦ computes with something else
                {bay.span}                            ¦ {bay.breadth}                       ¦ no Bay has
                {span}                                ¦ {knee}                              ¦ no condition binds
                {span}                                ¦ {setting.nearEar}                   ¦ no condition binds
                than {span}                           ¦ than {span}.                        ¦ @because is a clause
                for a while.                          ¦ for a while                         ¦ @teaches is
                A bay that rings close                ¦ A bay under butyl-2 that rings close ¦ names the product
                import unthrum.facts.*;               ¦ import java.util.*;                 ¦ stray line
                import unthrum.facts.*;               ¦ global java.util.List all           ¦ stray line
                """)
        void found(String sound, String broken, String fault) {
            assertThat(SOUND).contains(sound);
            String text = SOUND.replace(sound, broken == null ? "" : broken);
            assertThat(FAULTS.of(RuleText.of("damping", text).get(0)).toString()).contains(fault);
        }
    }
}
