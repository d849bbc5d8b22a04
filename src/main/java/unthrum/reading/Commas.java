package unthrum.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Decimal commas. The format has points, and inside brackets and braces YAML parts '0,7 mm' into '0' and '7 mm'; the
 * two are put together again here, so that one mistake gets one message.
 */
final class Commas {
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]+");
    private static final Pattern NUMBER = Pattern.compile("(-?[0-9][0-9.,]*,[0-9.,]*[0-9])(.*)");
    private static final Pattern GROUPED = Pattern.compile("-?[1-9][0-9]{0,2}(,[0-9]{3})+(\\.[0-9]+)?");

    private Commas() {
    }

    /** The block with every number put together that a comma parted, save under keys that hold any text. */
    static Node.Mapping joined(Node.Mapping block, Predicate<String> isText) {
        List<Node.Entry> entries = new ArrayList<>();
        for (Node.Entry entry : block.entries()) {
            Node.Entry last = entries.isEmpty() ? null : entries.get(entries.size() - 1);
            boolean goesOn = last != null && entry.value() instanceof Node.Scalar value && value.nothing()
                    && parted(last.value(), entry.key())
                    && !(last.key() instanceof Node.Scalar key && isText.test(key.text()));
            if (goesOn) {
                Node number = one((Node.Scalar) last.value(), (Node.Scalar) entry.key());
                entries.set(entries.size() - 1, new Node.Entry(last.key(), number));
            } else {
                entries.add(entry);
            }
        }
        return new Node.Mapping(entries, block.line(), block.column());
    }

    /** The entries of a list of quantities with every number put together that a comma parted. */
    static List<Node> joined(List<Node> entries) {
        List<Node> all = new ArrayList<>();
        for (Node entry : entries) {
            Node last = all.isEmpty() ? null : all.get(all.size() - 1);
            if (last != null && parted(last, entry)) {
                all.set(all.size() - 1, one((Node.Scalar) last, (Node.Scalar) entry));
            } else {
                all.add(entry);
            }
        }
        return all;
    }

    /** Whether nothing but a comma stands between a whole number and more digits. */
    private static boolean parted(Node one, Node next) {
        return one instanceof Node.Scalar a && next instanceof Node.Scalar b && !a.quoted() && !b.quoted()
                && WHOLE.matcher(a.text()).matches() && !b.text().isEmpty() && Character.isDigit(b.text().charAt(0))
                && a.line() == b.line() && a.column() + a.text().length() + 1 == b.column();
    }

    private static Node.Scalar one(Node.Scalar a, Node.Scalar b) {
        return new Node.Scalar(a.text() + "," + b.text(), false, a.line(), a.column());
    }

    /** What a text that begins with a number with a comma may mean: '0,7 mm' 0.7 mm, '1,400 mm' also 1400 mm. */
    static List<String> meant(String text) {
        Matcher written = NUMBER.matcher(text);
        if (!written.matches()) {
            return List.of();
        }
        String number = written.group(1);
        Set<String> numbers = new LinkedHashSet<>();
        if (number.indexOf(',') == number.lastIndexOf(',')) {
            boolean last = number.lastIndexOf('.') < number.indexOf(',');
            numbers.add(last ? number.replace(".", "").replace(',', '.') : number.replace(",", ""));
        }
        if (GROUPED.matcher(number).matches()) {
            numbers.add(number.replace(",", ""));
        }
        return numbers.stream().filter(NumberText::isNumber).map(n -> n + written.group(2)).toList();
    }

    /** What to write in place of a text with a comma: whatever it may mean that can be read. */
    static String remedy(String text, Predicate<String> reads) {
        List<String> readable = meant(text).stream().filter(reads).toList();
        return readable.isEmpty() ? "" : Nearest.write(readable);
    }
}
