package unthrum.audit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import unthrum.built.Built;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.material.Catalogue;
import unthrum.reading.Words;
import unthrum.survey.Survey;

/**
 * The fingerprint of all that an audit saw: survey, as-built file without its signature, rules with their numbers,
 * catalogue. SHA-256 (FIPS 180-4) over the values, so that a comment or another order of keys changes nothing; the
 * first 16 hexadecimal digits are shown.
 */
final class Digest {
    private static final int SHOWN = 16;
    private final MessageDigest sum;

    private Digest() {
        try {
            sum = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** @param trade the fingerprint of the rules and the catalogue */
    static String of(Survey survey, Built built, String trade) {
        Digest digest = new Digest();
        digest.value("survey", survey);
        digest.value("built", built.unsigned());
        digest.line(trade);
        return digest.shown();
    }

    /** The fingerprint of rules, numbers, assumptions and materials. */
    static String of(Knowledge knowledge, Catalogue catalogue) {
        Digest digest = new Digest();
        knowledge.cards().stream().map(RuleCard::subject).distinct().sorted().forEach(digest::rules);
        digest.value("thresholds", List.copyOf(knowledge.thresholds()));
        digest.value("assumptions", knowledge.assumptions());
        digest.value("catalogue", catalogue.all());
        return digest.shown();
    }

    private String shown() {
        return HexFormat.of().formatHex(sum.digest()).substring(0, SHOWN);
    }

    private void rules(String subject) {
        String name = "unthrum/rules/" + subject + ".drl";
        try (InputStream in = Digest.class.getClassLoader().getResourceAsStream(name)) {
            sum.update(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is absent leaves no trace, so that a new key of a later version changes no old fingerprint. */
    private void value(String key, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(v -> value(key, v));
        } else if (value instanceof List<?> list) {
            line(key + " " + list.size());
            list.forEach(v -> value(key, v));
        } else if (value instanceof Map<?, ?> map) {
            new TreeMap<>(map).forEach((k, v) -> value(key + "." + k, v));
        } else if (value instanceof Record whole) {
            line(key);
            for (RecordComponent component : whole.getClass().getRecordComponents()) {
                value(Words.key(component.getName()), part(whole, component));
            }
        } else {
            line(key + "=" + (value instanceof Enum<?> constant ? constant.name() : value));
        }
    }

    private static Object part(Record whole, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private void line(String text) {
        sum.update((text + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
