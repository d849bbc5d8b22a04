package unthrum.reading;

import java.math.BigDecimal;

/** An amount in a currency of ISO 4217, written like '550 EUR'. */
public record Money(BigDecimal amount, String currency) {
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
