package unthrum.reading;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

/** Reads an amount of money with its currency code. */
final class MoneyText {
    static final String EXPECTED = "an amount and its ISO 4217 code, such as 550 EUR";

    private MoneyText() {
    }

    static Outcome read(String text) {
        String shown = "'" + text + "'";
        int end = NumberText.length(text);
        String code = text.substring(end).strip();
        if (text.startsWith("-")) {
            return Outcome.wrong(shown + " is negative", EXPECTED, "");
        }
        if (end == 0) {
            return Outcome.wrong(shown, EXPECTED, "put the amount first, with a decimal point if it needs one");
        }
        if (code.startsWith(",")) {
            return Outcome.wrong(shown + " has a comma", EXPECTED, Commas.remedy(text, t -> read(t).value() != null));
        }
        if (code.isEmpty()) {
            return Outcome.wrong(shown + " without a currency", EXPECTED, "add the code");
        }
        List<String> codes =
                Currency.getAvailableCurrencies().stream().map(Currency::getCurrencyCode).sorted().toList();
        if (!codes.contains(code)) {
            return Outcome.wrong(shown + " with the unknown currency '" + code + "'", EXPECTED,
                    remedy(text.substring(0, end), code, codes));
        }
        return Outcome.of(new Money(new BigDecimal(text.substring(0, end)), code));
    }

    private static String remedy(String amount, String written, List<String> codes) {
        String code = switch (written) {
            case "€", "Euro", "euro" -> "EUR";
            case "£" -> "GBP";
            case "$" -> "USD";
            default -> codes.stream().filter(c -> c.equalsIgnoreCase(written)).findFirst().orElse("");
        };
        return code.isEmpty() ? "" : Nearest.didYouMean(amount + " " + code);
    }
}
