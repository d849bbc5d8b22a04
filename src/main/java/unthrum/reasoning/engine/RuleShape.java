package unthrum.reasoning.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import org.drools.base.base.ClassObjectType;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.Pattern;
import org.drools.base.rule.RuleConditionElement;
import org.drools.base.rule.constraint.Constraint;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.modelcompiler.constraints.LambdaConstraint;
import org.kie.api.definition.rule.Rule;

/** The conditions of a compiled rule, taken apart: what the rule base allows and nothing more. */
record RuleShape(List<Condition> conditions) {

    private static final java.util.regex.Pattern REFERENCE =
            java.util.regex.Pattern.compile("\\$(\\w+)\\.(\\w+)");
    /** The component that a test starts with; a test for an assumption is about the component that it names. */
    private static final java.util.regex.Pattern OWN =
            java.util.regex.Pattern.compile("assumed (?:not )?contains \"(\\w+)\"|(\\w+).*");

    /** How many facts a condition needs: one, none at all, or at least one without naming it. */
    enum Sense { ONE, NONE, SOME }

    /** One pattern: facts of a type that meet all its tests. */
    record Condition(Sense sense, Class<?> type, String variable, List<Test> tests) {
    }

    /** One test of a pattern, with the components it reads of its own fact and of facts bound before. */
    record Test(String text, SingleConstraint predicate, List<String> variables, Set<String> own, List<Reference> others) {
    }

    /** A component of a fact bound earlier: $knee.value. */
    record Reference(String variable, String component) {
    }

    static RuleShape of(Rule rule) {
        List<Condition> conditions = new ArrayList<>();
        for (RuleConditionElement child : ((RuleImpl) rule).getLhs().getChildren()) {
            conditions.add(condition(rule, child, Sense.ONE));
        }
        return new RuleShape(List.copyOf(conditions));
    }

    private static Condition condition(Rule rule, RuleConditionElement element, Sense sense) {
        if (element instanceof Pattern pattern) {
            return new Condition(sense, ((ClassObjectType) pattern.getObjectType()).getClassType(),
                    name(pattern.getDeclaration().getIdentifier()),
                    pattern.getConstraints().stream().map(RuleShape::test).toList());
        }
        if (element instanceof GroupElement group && sense == Sense.ONE && group.getChildren().size() == 1
                && (group.isNot() || group.isExists())) {
            return condition(rule, group.getChildren().get(0), group.isNot() ? Sense.NONE : Sense.SOME);
        }
        throw new IllegalStateException("rule \"" + rule.getName() + "\" has a condition of a shape not allowed: "
                + element);
    }

    private static Test test(Constraint constraint) {
        LambdaConstraint lambda = (LambdaConstraint) constraint;
        SingleConstraint predicate = lambda.getEvaluator().getConstraint();
        String text = lambda.getPredicateInformation().getStringConstraint();
        List<String> variables = new ArrayList<>();
        for (Variable<?> variable : predicate.getVariables()) {
            variables.add(name(variable.getName()));
        }
        List<Reference> others = new ArrayList<>();
        for (Matcher m = REFERENCE.matcher(text); m.find();) {
            others.add(new Reference(m.group(1), m.group(2)));
        }
        return new Test(text, predicate, variables, own(text), others);
    }

    private static Set<String> own(String text) {
        Matcher m = OWN.matcher(text);
        return !m.matches() ? Set.of() : Set.of(m.group(1) != null ? m.group(1) : m.group(2));
    }

    /** A variable's name as the rule's author wrote it, without its sign. */
    static String name(String identifier) {
        return identifier.startsWith("$") ? identifier.substring(1) : identifier;
    }
}
