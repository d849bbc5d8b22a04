package unthrum.reasoning;

import java.lang.reflect.RecordComponent;
import unthrum.facts.Fact;
import unthrum.facts.KnownAs;
import unthrum.reading.Words;

/** The survey's key behind a component of a fact. */
public final class SurveyKeys {

    private SurveyKeys() {
    }

    public static String of(Class<? extends Fact> fact, String component) {
        for (RecordComponent c : fact.getRecordComponents()) {
            if (c.getName().equals(component)) {
                KnownAs known = c.getAnnotation(KnownAs.class);
                return known == null ? Words.key(component) : known.value();
            }
        }
        return Words.key(component);
    }
}
