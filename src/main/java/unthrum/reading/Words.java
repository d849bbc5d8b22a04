package unthrum.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How Java names are written in files and on screens: BOX_SECTION is 'box section', payloadLeft 'payload left'. */
public final class Words {
    private Words() {
    }

    /** The word of an enum constant: lower case, spaces. A constant may override {@code toString} to spell itself. */
    public static String of(Enum<?> constant) {
        String own = constant.toString();
        return own.equals(constant.name()) ? own.toLowerCase(Locale.ROOT).replace('_', ' ') : own;
    }

    /** The key of a record component: spaces before capitals. */
    public static String key(String component) {
        StringBuilder key = new StringBuilder();
        for (char c : component.toCharArray()) {
            key.append(c >= 'A' && c <= 'Z' ? " " : "").append(c);
        }
        return key.toString().toLowerCase(Locale.ROOT);
    }

    /** All words of an enum, in its order. */
    static List<String> all(Class<?> enumType) {
        return Arrays.stream(enumType.getEnumConstants()).map(c -> of((Enum<?>) c)).toList();
    }

    /** 'a, b or c'. */
    static String either(List<String> words) {
        String all = String.join(", ", words);
        int last = all.lastIndexOf(", ");
        return last < 0 ? all : all.substring(0, last) + " or " + all.substring(last + 2);
    }
}
