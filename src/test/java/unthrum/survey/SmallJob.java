package unthrum.survey;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/** A van of one panel, for tests of what the reader makes of that panel's keys. */
public final class SmallJob {

    private SmallJob() {
    }

    /** @param keys of the panel, each on a line of its own */
    public static Survey floor(String... keys) {
        String yaml = """
                survey: Small job
                vehicle: {body: van, drive: petrol, use: daily}
                aims: [road drumming]
                panels:
                  - panel: floor
                    zone: floor
                """ + String.join("\n", keys).lines().map(l -> "    " + l.strip() + "\n").collect(Collectors.joining());
        return SurveyReader.read("van.yaml", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
    }
}
