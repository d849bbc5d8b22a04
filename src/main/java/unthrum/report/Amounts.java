package unthrum.report;

import java.util.Locale;
import unthrum.reading.Dimension;
import unthrum.reading.Money;

/** Amounts as a fitter reads them. */
final class Amounts {

    /** Below this a mass reads better in grams. */
    private static final double GRAMS_BELOW = 0.095;

    /** Below this a share would be shown as nothing. */
    private static final double LEAST_SHARE = 0.005;

    /** From this length on nobody reads tenths of a millimetre. */
    private static final double WHOLE_FROM = 0.1;

    private Amounts() {
    }

    /** With its unit; a share too small to show is not nothing. */
    static String quantity(double si, Dimension dimension) {
        if (dimension == Dimension.SHARE && si > 0 && si < LEAST_SHARE) {
            return "less than 1 %";
        }
        boolean whole = dimension == Dimension.LENGTH && si >= WHOLE_FROM;
        return dimension.show(whole ? Math.round(si * 1000) / 1000.0 : si);
    }

    static String mass(double kg) {
        return kg > 0 && kg < GRAMS_BELOW ? Math.round(kg * 1000) + " g" : Dimension.MASS.show(kg);
    }

    /** For a column headed kg. */
    static String kilograms(double kg) {
        return kg == 0 ? "–" : String.format(Locale.ROOT, kg < GRAMS_BELOW ? "%.2f" : "%.1f", kg);
    }

    static String area(double squareMetres) {
        return Dimension.AREA.show(squareMetres);
    }

    static String length(double metres) {
        return quantity(metres, Dimension.LENGTH);
    }

    static String share(double share) {
        return quantity(share, Dimension.SHARE);
    }

    static String money(double amount, String currency) {
        String figure = amount == Math.rint(amount) ? String.valueOf(Math.round(amount))
                : String.format(Locale.ROOT, "%.2f", amount);
        return figure + " " + currency;
    }

    static String money(Money money) {
        return money(money.amount().doubleValue(), money.currency());
    }
}
