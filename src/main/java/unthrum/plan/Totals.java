package unthrum.plan;

import java.util.Optional;
import unthrum.reading.Money;
import unthrum.reading.Quantity;

/**
 * What the plan adds up to, with the client's limits where there are any.
 *
 * @param mass    kg
 * @param roof    kg of it on roofs
 * @param price   of the packs to buy, in the catalogue's currency
 * @param payload what the rules leave of the payload for the whole job
 */
public record Totals(double mass, double roof, double price, String currency, Optional<Quantity> massLimit,
                     Optional<Quantity> roofLimit, Optional<Money> moneyLimit, Optional<Quantity> payload) {

    /** A money limit in another currency than the prices cannot be held against them. */
    public boolean moneyComparable() {
        return moneyLimit.map(m -> m.currency().equals(currency)).orElse(true);
    }
}
