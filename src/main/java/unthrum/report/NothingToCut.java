package unthrum.report;

import unthrum.plan.LeftOut;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;

/** Says why a plan gives nothing to cut, and what the nearest way out is. */
final class NothingToCut {

    private final Plan plan;

    NothingToCut(Plan plan) {
        this.plan = plan;
    }

    void print(Page page) {
        page.paragraph(0, "Nothing to cut: the plan lays no sheet and no roll.");
        boolean any = false;
        for (PlannedPanel panel : plan.panels()) {
            for (LeftOut left : panel.leftOut()) {
                any = true;
                page.bullet(0, left.material().material() + " for " + panel.name() + " is left out for want of "
                        + Words.of(left.why()) + ".");
            }
        }
        if (any) {
            plan.shares().nextPacks().stream().findFirst().ifPresent(pack -> page.paragraph(0,
                    "Nearest way out: a pack of " + pack.material().material() + " for "
                            + Amounts.money(pack.price(), plan.totals().currency()) + ", which serves "
                            + PlaceNames.anywhere().of(pack.places().get(0)) + " first."));
        } else {
            page.paragraph(0, "No panel gets a layer yet: 'unthrum advise' says why, panel by panel.");
        }
    }
}
