package unthrum.plan;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import com.google.ortools.sat.ConstraintProto;
import com.google.ortools.sat.CpModelProto;
import com.google.ortools.sat.CpObjectiveProto;
import com.google.ortools.sat.LinearConstraintProto;
import java.util.List;
import java.util.OptionalDouble;

/** The same model with everything divisible: half a pack, a third of a layup. Its optimum bounds the true one. */
final class Relaxation {

    /** Beyond this a bound of the model means none. */
    private static final double NONE = 1e17;

    private final MPSolver solver = MPSolver.createSolver("GLOP");
    private final MPVariable[] variables;

    Relaxation(CpModelProto model) {
        solver.setSolverSpecificParametersAsString("use_preprocessing:false use_dual_simplex:true");
        variables = new MPVariable[model.getVariablesCount()];
        for (int i = 0; i < variables.length; i++) {
            variables[i] = solver.makeNumVar(model.getVariables(i).getDomain(0), model.getVariables(i).getDomain(1), "");
        }
        model.getConstraintsList().forEach(this::add);
        CpObjectiveProto goal = model.getObjective();
        for (int i = 0; i < goal.getVarsCount(); i++) {
            MPVariable variable = variables[goal.getVars(i)];
            solver.objective().setCoefficient(variable,
                    solver.objective().getCoefficient(variable) + goal.getCoeffs(i));
        }
        solver.objective().setMinimization();
    }

    /** The least that the goal can be, with the bounds last set; empty when nothing is possible at all. */
    OptionalDouble least() {
        return switch (solver.solve()) {
            case OPTIMAL -> OptionalDouble.of(solver.objective().value());
            case INFEASIBLE -> OptionalDouble.empty();
            default -> OptionalDouble.of(Double.NEGATIVE_INFINITY);
        };
    }

    void bound(int variable, long from, long to) {
        variables[variable].setBounds(from, to);
    }

    double value(int variable) {
        return variables[variable].solutionValue();
    }

    private void add(ConstraintProto constraint) {
        switch (constraint.getConstraintCase()) {
            case LINEAR -> add(constraint.getLinear());
            case BOOL_OR -> add(constraint.getBoolOr().getLiteralsList(), 1, MPSolver.infinity());
            case AT_MOST_ONE -> add(constraint.getAtMostOne().getLiteralsList(), -MPSolver.infinity(), 1);
            case EXACTLY_ONE -> add(constraint.getExactlyOne().getLiteralsList(), 1, 1);
            default -> throw new IllegalStateException("no relaxation of " + constraint.getConstraintCase());
        }
    }

    /** Scaled to its largest factor, for a steady calculation. */
    private void add(LinearConstraintProto linear) {
        double scale = linear.getCoeffsList().stream().mapToDouble(Math::abs).max().orElse(1);
        double from = linear.getDomain(0) < -NONE ? -MPSolver.infinity() : linear.getDomain(0) / scale;
        double to = linear.getDomain(1) > NONE ? MPSolver.infinity() : linear.getDomain(1) / scale;
        MPConstraint row = solver.makeConstraint(from, to);
        for (int i = 0; i < linear.getVarsCount(); i++) {
            MPVariable variable = variables[linear.getVars(i)];
            row.setCoefficient(variable, row.getCoefficient(variable) + linear.getCoeffs(i) / scale);
        }
    }

    /** A sum of yes and no; a negative literal stands for one minus its variable. */
    private void add(List<Integer> literals, double from, double to) {
        long denied = literals.stream().filter(l -> l < 0).count();
        MPConstraint row = solver.makeConstraint(from - denied, to - denied);
        literals.forEach(l -> row.setCoefficient(variables[l < 0 ? -l - 1 : l], l < 0 ? -1 : 1));
    }
}
