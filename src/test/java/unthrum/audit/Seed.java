package unthrum.audit;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.built.Edit;

/**
 * One mistake made on one panel of a sound job, with the findings that it must give and no others.
 *
 * @param expected each as 'SEVERITY MISTAKE place rule', the rule one of those named; '-' for none
 */
record Seed(String mistake, String scenario, String panel, UnaryOperator<BuiltPanel> edit, List<String> expected) {

    Built in(Built sound) {
        return Edit.with(sound, "panels", sound.panels().stream()
                .map(p -> p.panel().equals(panel) ? edit.apply(p) : p).toList());
    }

    /** Whether an expectation is met by a finding. */
    static boolean meets(Finding finding, String expectation) {
        String[] words = expectation.split(" ", 3);
        int last = words[2].lastIndexOf(' ');
        String rule = words[2].substring(last + 1);
        return finding.severity().name().equals(words[0]) && finding.mistake().name().equals(words[1])
                && finding.place().toString().equals(words[2].substring(0, last))
                && (rule.equals("-") ? finding.rules().isEmpty() : finding.rules().contains(rule));
    }

    boolean found(List<Finding> findings) {
        return expected.stream().allMatch(e -> findings.stream().anyMatch(f -> meets(f, e)));
    }

    /** The same seed without what is expected of the vehicle as a whole: there the sum over all panels decides. */
    Seed onPanel() {
        return new Seed(mistake, scenario, panel, edit, expected.stream().filter(e -> !e.contains("the vehicle")).toList());
    }

    /** The keys of the panel that the mistake changes. */
    List<String> keys(BuiltPanel sound) {
        BuiltPanel bad = edit.apply(sound);
        return Arrays.stream(BuiltPanel.class.getRecordComponents()).map(RecordComponent::getName)
                .filter(key -> !Edit.get(sound, key).equals(Edit.get(bad, key))).toList();
    }

    List<Finding> beyond(List<Finding> findings) {
        return findings.stream().filter(f -> expected.stream().noneMatch(e -> meets(f, e))).toList();
    }

    static Seed of(String mistake, String scenario, String panel, UnaryOperator<BuiltPanel> edit, String... expected) {
        return new Seed(mistake, scenario, panel, edit, List.of(expected));
    }

    static <T> UnaryOperator<BuiltPanel> set(String component, T value) {
        return p -> Edit.with(p, component, Optional.of(value));
    }

    static UnaryOperator<BuiltPanel> unset(String component) {
        return p -> Edit.with(p, component, Optional.empty());
    }

    @Override
    public String toString() {
        return mistake + " on " + panel + " of " + scenario;
    }
}
