package unthrum.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import unthrum.facts.Behind;
import unthrum.facts.Fact;
import unthrum.facts.Fixing;
import unthrum.facts.Gone;
import unthrum.facts.Lid;
import unthrum.facts.Moving;
import unthrum.facts.Opening;
import unthrum.facts.Rattle;
import unthrum.facts.ServiceCover;
import unthrum.survey.OpeningKind;
import unthrum.survey.OpeningState;
import unthrum.survey.PanelEntry;

/** What is in, on and around a panel: holes, fixings, moving parts, covers, hazards, missing and loose parts. */
record Fittings(PanelEntry entry, Supplier<Answers> answers) {

    /** Holes that must stay open whatever the survey says. */
    private static final Set<OpeningKind> ALWAYS_OPEN = Set.of(OpeningKind.DRAIN, OpeningKind.BREATHER,
            OpeningKind.VENT, OpeningKind.PRESSURE_RELIEF_FLAP, OpeningKind.GAS_VENT);

    List<Fact> facts() {
        String panel = entry.panel();
        List<Fact> facts = new ArrayList<>();
        openings(facts);
        fixings(facts);
        covers(facts);
        entry.moving().orElse(List.of()).forEach(part -> facts.add(new Moving(panel, part)));
        entry.behind().orElse(List.of()).forEach(hazard -> facts.add(new Behind(panel, hazard)));
        entry.missing().orElse(List.of()).forEach(part -> facts.add(new Gone(panel, part)));
        entry.loose().orElse(List.of()).forEach(part -> facts.add(new Rattle(panel, part)));
        entry.lid().ifPresent(lid -> {
            Answers a = answers.get();
            double margin = a.quantity(lid.margin(), "margin", "lid margin");
            facts.add(new Lid(panel, lid.holder(), margin, a.assumed()));
        });
        return facts;
    }

    private void openings(List<Fact> facts) {
        int number = 1;
        for (PanelEntry.Opening opening : entry.openings().orElse(List.of())) {
            Answers a = answers.get();
            double size = a.quantity(opening.size(), "size", "opening size");
            int count = a.count(opening.count(), "count", "opening count");
            OpeningState state = a.word(opening.state(), OpeningState.class, "state", "opening state");
            boolean staysOpen = ALWAYS_OPEN.contains(opening.kind())
                    || a.flag(opening.mustStayOpen(), "staysOpen", "must stay open");
            facts.add(new Opening(entry.panel(), number++, opening.kind(), size, count, state, staysOpen, a.assumed()));
        }
    }

    private void fixings(List<Fact> facts) {
        int number = 1;
        for (PanelEntry.Fixing fixing : entry.fixings().orElse(List.of())) {
            Answers a = answers.get();
            double size = a.quantity(fixing.size(), "size", "fixing size");
            int count = a.count(fixing.count(), "count", "fixing count");
            facts.add(new Fixing(entry.panel(), number++, fixing.kind(), size, count, a.assumed()));
        }
    }

    private void covers(List<Fact> facts) {
        int number = 1;
        for (PanelEntry.Cover cover : entry.covers().orElse(List.of())) {
            double area = cover.size().map(s -> s.get(0).si() * s.get(1).si()).orElse(Double.NaN);
            facts.add(new ServiceCover(entry.panel(), number++, cover.kind(), area));
        }
    }
}
