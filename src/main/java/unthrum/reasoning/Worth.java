package unthrum.reasoning;

import java.util.List;
import java.util.Map;
import unthrum.effect.Laid;
import unthrum.effect.PanelAccount;
import unthrum.facts.AimedAt;
import unthrum.facts.Bay;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.reasoning.engine.Reason;
import unthrum.survey.Aim;

/** What layers are worth beside their computed gain: what they cost, and the trade's weights where no formula reaches. */
final class Worth {

    private final Knowledge knowledge;
    private final PanelAccount account;
    private final Map<Layer, List<WeighedWant>> wanted;
    private final double perKilogram;
    private final double perMoney;

    Worth(Knowledge knowledge, PanelAccount account, Map<Layer, List<WeighedWant>> wanted) {
        this.knowledge = knowledge;
        this.account = account;
        this.wanted = wanted;
        this.perKilogram = account.vehicle().leastForKilogram();
        this.perMoney = account.vehicle().leastForMoney();
    }

    /** What a layer's mass and money would have to bring; what safety needs is not asked. */
    double cost(Laid laid) {
        return burden(laid) + (isAsked(laid.layer()) ? perMoney * laid.price() : 0);
    }

    /** The same for its mass alone: what is shared among panels is paid by the pack, or lies on the shelf. */
    double burden(Laid laid) {
        return isAsked(laid.layer()) ? perKilogram * laid.mass() : 0;
    }

    private static boolean isAsked(Layer layer) {
        return layer != Layer.HEAT_SHIELD;
    }

    /**
     * What the trade's weight of a layer counts, by the part of the vehicle that it covers; of one that only protects
     * others a small part, so that it takes the room that they leave.
     */
    double trade(Laid laid) {
        double weight = wanted.getOrDefault(laid.layer(), List.of()).stream().mapToDouble(this::untold).max().orElse(0);
        return counted(weight, laid.area()) * (protects(laid.layer()) ? knowledge.number("worth/protection") : 1);
    }

    /** What the trade's weight of damping on a bay counts whose ringing no formula tells. */
    double trade(Bay bay, WeighedWant want) {
        return Double.isNaN(bay.lowest()) ? counted(want.weight(), bay.area()) : 0;
    }

    private double counted(double weight, double area) {
        return knowledge.number("worth/trade") * weight / knowledge.number("weight/strong")
                * Math.min(1, area / account.vehicle().area());
    }

    /** The weight of the reasons for a want whose gain no formula tells. */
    private double untold(WeighedWant want) {
        return want.reasons().filter(r -> !isTold(r, want.layer())).map(Reason::rule).distinct()
                .mapToDouble(card -> knowledge.number(card.weight().orElseThrow().threshold())).sum();
    }

    /**
     * An aim's reason is told by the aim's formula. A reason for quiet that names no aim is told by the aims of sound: what
     * the client does not want quiet counts for nothing. Dry and warm metal in a lived-in vehicle is told by no aim but
     * its own.
     */
    private boolean isTold(Reason reason, Layer layer) {
        boolean aimed = reason.bindings().values().stream().filter(AimedAt.class::isInstance).map(AimedAt.class::cast)
                .anyMatch(a -> account.vehicle().tells(a.aim()));
        return PanelAccount.tells(layer) && (aimed || layer != Layer.INSULATION
                || account.vehicle().tells(Aim.CONDENSATION));
    }

    private static boolean protects(Layer layer) {
        return layer == Layer.WEAR_FACE;
    }
}
