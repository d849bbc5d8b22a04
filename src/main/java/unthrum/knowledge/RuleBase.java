package unthrum.knowledge;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;

/** The compiled rules, as the build left them in the jar, with the card of each. */
public record RuleBase(KieBase compiled, Map<String, RuleCard> cardsByName) {

    private static final String MODEL_LIST = "META-INF/kie/unthrum/unthrum/drools-model";

    static RuleBase load() {
        KieBase base = KieBaseBuilder.createKieBaseFromModel(models());
        Map<String, RuleCard> cards = new LinkedHashMap<>();
        base.getKiePackages().stream().flatMap(p -> p.getRules().stream())
                .sorted((a, b) -> a.getName().compareTo(b.getName()))
                .forEach((Rule rule) -> cards.put(rule.getName(), RuleCard.of(rule)));
        return new RuleBase(base, cards);
    }

    /** The same rules, compiled anew, without some of them. */
    RuleBase without(Collection<String> ids) {
        RuleBase fewer = load();
        fewer.cardsByName.values().stream().filter(c -> ids.contains(c.id())).map(RuleCard::name).toList()
                .forEach(name -> {
                    fewer.cardsByName.remove(name);
                    fewer.compiled.getKiePackages().stream().filter(p -> p.getRules().stream()
                            .anyMatch(r -> r.getName().equals(name))).map(KiePackage::getName).toList()
                            .forEach(p -> fewer.compiled.removeRule(p, name));
                });
        return fewer;
    }

    private static List<Model> models() {
        List<Model> models = new ArrayList<>();
        try (BufferedReader names = new BufferedReader(new InputStreamReader(
                RuleBase.class.getClassLoader().getResourceAsStream(MODEL_LIST), StandardCharsets.UTF_8))) {
            for (String name = names.readLine(); name != null; name = names.readLine()) {
                if (!name.startsWith("Drools-Model-Version")) {
                    models.add((Model) Class.forName(name).getDeclaredConstructor().newInstance());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the jar holds no usable rules: build it again", e);
        }
        return models;
    }
}
