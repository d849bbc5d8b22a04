package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import unthrum.facts.Access;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Bonding;
import unthrum.material.Material.Form;
import unthrum.reasoning.Closing;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.Patch;
import unthrum.derive.PanelFacts;
import unthrum.survey.Reach;

/** Layups in words: short for tables, as an instruction for the panel. */
final class LayupWords {

    private final Sentences sentences;
    private final boolean reachedInPart;

    /** For layups of which nobody says why they cover what they cover. */
    LayupWords(Sentences sentences) {
        this.sentences = sentences;
        this.reachedInPart = false;
    }

    /** For the layups of a plan: where a panel is reached in part, what is covered is what can be reached. */
    LayupWords(PanelFacts facts) {
        this.sentences = new Sentences(PlaceNames.on(facts));
        this.reachedInPart = facts.the(Access.class).reach() == Reach.PART;
    }

    /** 'butyl-2 2 mm on 40 % of bays 1 and 2; nitrile-foam-10 10 mm all over'. */
    String brief(Layup layup) {
        return layup.layers().stream().map(laid -> laid.material().material() + " "
                + Amounts.length(laid.material().thickness().si()) + " " + where(laid, "all over"))
                .collect(Collectors.joining("; "));
    }

    /** 'butyl-2 and nitrile-foam-10', or 'nothing'. */
    static String names(Layup layup) {
        return layup.isEmpty() ? "nothing"
                : English.and(layup.layers().stream().map(l -> l.material().material()).toList());
    }

    /** One instruction a layer, from the metal inward. */
    List<String> instructions(Layup layup) {
        return layup.layers().stream().map(this::instruction).toList();
    }

    private String instruction(Laid laid) {
        Material material = laid.material();
        String mass = Amounts.mass(laid.mass());
        if (laid.layer() == Layer.DAMPING) {
            return "Patch the middle of " + bays(laid.patches()) + " with " + material.material() + ", "
                    + shares(laid.patches()) + ": " + mass + ".";
        }
        return verb(material) + " " + material.material() + " (" + material.layer().word() + ", "
                + Amounts.length(material.thickness().si()) + ") " + where(laid, "over the whole face") + ": "
                + mass + ".";
    }

    private static String verb(Material material) {
        if (material.layer() == Layer.HEAT_SHIELD) {
            return "Hang";
        }
        return material.bonding() == Bonding.FASTENED ? "Fasten"
                : material.bonding().sticks() ? "Stick" : "Lay";
    }

    private String bays(List<Patch> patches) {
        return English.andNumbered(patches.stream().map(p -> sentences.place(p.place())).toList());
    }

    /** '34 % of each' or '34 % of bays 1 and 2 and 40 % of bay 3'. */
    private String shares(List<Patch> patches) {
        Map<String, List<Patch>> byShare = byShare(patches);
        if (byShare.size() == 1) {
            return byShare.keySet().iterator().next() + (patches.size() == 1 ? " of it" : " of each");
        }
        List<String> parts = new ArrayList<>();
        byShare.forEach((share, some) -> parts.add(share + " of " + bays(some)));
        return English.and(parts);
    }

    private String where(Laid laid, String whole) {
        if (laid.layer() == Layer.HEAT_SHIELD) {
            return "on the hot side, clear of the metal";
        }
        List<String> parts = new ArrayList<>();
        byShare(laid.patches()).forEach((share, some) -> {
            boolean all = some.size() == 1 && some.get(0).place().isWholePanel();
            parts.add(!all ? "on " + share + of(bays(some))
                    : some.get(0).coverage() >= 1 ? whole
                    : reachedInPart ? "on the " + share + " that can be reached" : "on " + share + " of it");
        });
        return English.and(parts);
    }

    private static String of(String bays) {
        return bays.equals(PlaceNames.PANEL) ? " of it" : " of " + bays;
    }

    private static Map<String, List<Patch>> byShare(List<Patch> patches) {
        Map<String, List<Patch>> byShare = new LinkedHashMap<>();
        patches.forEach(p -> byShare.computeIfAbsent(Amounts.share(p.coverage()), k -> new ArrayList<>()).add(p));
        return byShare;
    }

    /** 'butyl-2 2 mm on 40 % of bays 1 and 2, 0.9 kg'. */
    String piece(Laid laid) {
        return laid.material().material() + " " + Amounts.length(laid.material().thickness().si()) + " "
                + where(laid, "all over") + ", " + Amounts.mass(laid.mass());
    }

    /** 'cable hole 1 with plug-20'. */
    String plug(Closing closing) {
        String piece = closing.piece().map(Material::material).orElse("a piece of its own");
        return closing.opening().place().part() + " with " + piece
                + (closing.count() > 1 ? ", " + closing.count() + " of them" : "");
    }

    /** 'Close cable hole 1 with plug-20', with how many when there are several. */
    String closing(Closing closing) {
        String hole = sentences.place(closing.want().place());
        if (closing.piece().isEmpty()) {
            return "Close " + hole + ": no piece in the catalogue is large and hardy enough for its "
                    + Amounts.length(closing.opening().size()) + ", so it takes a piece of its own.";
        }
        Material piece = closing.piece().get();
        String many = closing.count() > 1 ? ", " + closing.count() + " of them" : "";
        String with = piece.form() == Form.ROLL ? piece.material() + " (tape)" : piece.material();
        return "Close " + hole + " with " + with + many + ".";
    }
}
