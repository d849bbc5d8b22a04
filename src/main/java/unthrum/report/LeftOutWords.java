package unthrum.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.LeftOut;
import unthrum.plan.LeftOut.Scarce;
import unthrum.plan.PlannedPanel;

/** What a panel goes without because something ran out, in words. */
final class LeftOutWords {

    private final PlannedPanel planned;
    private final Sentences sentences;

    LeftOutWords(PlannedPanel planned, Sentences sentences) {
        this.planned = planned;
        this.sentences = sentences;
    }

    /** 'For want of money: vinyl-barrier-2 (0.81 m²).', one for each thing that ran out. */
    List<String> lines() {
        Map<Scarce, List<LeftOut>> byReason = planned.leftOut().stream()
                .collect(Collectors.groupingBy(LeftOut::why, TreeMap::new, Collectors.toList()));
        return byReason.entrySet().stream().map(e -> "For want of " + scarce(e.getKey()) + ": "
                + English.and(e.getValue().stream().collect(Collectors.groupingBy(p -> p.material().material(),
                        LinkedHashMap::new, Collectors.toList())).entrySet().stream()
                        .map(pieces -> pieces.getKey() + " " + places(pieces.getValue())).toList()) + ".").toList();
    }

    /** 'for want of money', where a material that the rules chose is not laid at all. */
    Optional<String> why(Material material) {
        return planned.layup().layers().stream().anyMatch(l -> l.material().equals(material)) ? Optional.empty()
                : planned.leftOut().stream().filter(l -> l.material().equals(material)).findFirst()
                        .map(l -> "for want of " + scarce(l.why()));
    }

    private String places(List<LeftOut> pieces) {
        if (pieces.get(0).material().layer() == Layer.SEAL) {
            return "for " + English.andNumbered(pieces.stream().map(p -> sentences.place(p.patch().place())).toList());
        }
        double area = pieces.stream().mapToDouble(p -> p.patch().area()).sum();
        boolean whole = pieces.get(0).patch().place().isWholePanel();
        return "(" + Amounts.area(area) + (whole ? "" : " on " + English.andNumbered(pieces.stream()
                .map(p -> sentences.place(p.patch().place())).toList())) + ")";
    }

    private static String scarce(Scarce why) {
        return switch (why) {
            case MONEY -> "money";
            case ADDED_MASS -> "mass that may be added";
            case ROOF_MASS -> "mass that the roof may take";
            case PAYLOAD -> "payload";
            case PANEL -> "what the panel itself may take";
        };
    }
}
