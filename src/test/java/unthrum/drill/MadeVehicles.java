package unthrum.drill;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/** Whole vehicles put together from practice panels, always the same for a number. */
public final class MadeVehicles {

    /** Panels of each vehicle. */
    public static final int PANELS = 40;

    private MadeVehicles() {
    }

    public static Survey survey(int vehicle) {
        long first = (long) vehicle * PANELS;
        String head = PanelMaker.text(first);
        StringBuilder text = new StringBuilder(head.substring(0, head.indexOf("panels:\n") + "panels:\n".length()));
        for (long panel = first; panel < first + PANELS; panel++) {
            String own = PanelMaker.text(panel);
            text.append(own.substring(own.indexOf("  - panel: "))
                    .replaceFirst("- panel: (\\S+)", "- panel: $1-" + (panel - first)));
        }
        return SurveyReader.read("vehicle " + vehicle,
                new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)));
    }
}
