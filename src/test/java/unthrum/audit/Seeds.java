package unthrum.audit;

import java.util.List;
import java.util.stream.Stream;
import unthrum.Scenarios;

/**
 * The common mistakes of the trade, each on every panel of a scenario where it can be made. What must be found is
 * written by hand from the rules' own texts and not asked of the audit. Common practice, no source.
 */
final class Seeds {
    private Seeds() {
    }

    static List<Seed> of(String scenario) {
        return Stream.of(new MisplacedSeeds(scenario), new LayerSeeds(scenario), new WorkSeeds(scenario)).flatMap(maker -> {
            Scenarios.plan(scenario).panels().forEach(maker::all);
            return maker.seeds().stream();
        }).toList();
    }
}
