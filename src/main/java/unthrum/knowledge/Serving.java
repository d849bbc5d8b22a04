package unthrum.knowledge;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.drools.base.base.ClassObjectType;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.Pattern;
import org.drools.base.rule.RuleConditionElement;
import org.drools.modelcompiler.constraints.LambdaConstraint;
import org.kie.api.definition.rule.Rule;
import unthrum.facts.Want;
import unthrum.material.Layer;

/** Which layers a rule serves that speaks as soon as one of them is wanted, without saying which one it was. */
final class Serving {

    private static final java.util.regex.Pattern LAYER = java.util.regex.Pattern.compile("layer (==|!=|in|not in) (.*)");
    private static final java.util.regex.Pattern NAMED = java.util.regex.Pattern.compile("Layer\\.(\\w+)");

    private Serving() {
    }

    /** Empty where the rule asks for no want of any kind. */
    static Optional<Set<Layer>> of(Rule rule) {
        return ((RuleImpl) rule).getLhs().getChildren().stream().flatMap(c -> wanted(c).stream())
                .map(Serving::layers).findFirst();
    }

    private static Optional<Pattern> wanted(RuleConditionElement element) {
        return element instanceof GroupElement group && group.isExists()
                && group.getChildren().get(0) instanceof Pattern pattern
                && ((ClassObjectType) pattern.getObjectType()).getClassType() == Want.class
                ? Optional.of(pattern) : Optional.empty();
    }

    private static Set<Layer> layers(Pattern want) {
        Set<Layer> layers = EnumSet.allOf(Layer.class);
        want.getConstraints().forEach(c -> {
            Matcher test = LAYER.matcher(((LambdaConstraint) c).getPredicateInformation().getStringConstraint());
            if (test.matches()) {
                Set<Layer> named = NAMED.matcher(test.group(2)).results().map(m -> Layer.valueOf(m.group(1)))
                        .collect(Collectors.toSet());
                boolean meant = Arrays.asList("==", "in").contains(test.group(1));
                layers.removeIf(l -> named.contains(l) != meant);
            }
        });
        return layers;
    }
}
