package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.plan.Proof;
import unthrum.plan.Proof.Standing;

@DisplayName("How sure the sharing is")
class SharingTextTest {

    @ParameterizedTest(name = "{0}: {1} served of at most {2}")
    @CsvSource(delimiter = '|', value = {
        "PROVED_BEST | 40 | 40 | No other way of sharing brings more: proved.",
        "PROVED_BEST | 0.4 | 0.405 | No other way of sharing would take more than another 0.5 % of what the client "
            + "wants rid of: proved.",
        "BEST_FOUND  | 40 | 50 | The best found in the time given. Another way could bring up to 25 % more.",
        "BEST_FOUND  | 40 | 40 | No other way of sharing brings more: proved. One that brings as much "
            + "may cost or weigh less; the time given was up before all were tried.",
        "BEST_FOUND  |  0 | 50 | The best found in the time given. Another way might bring something.",
        "BY_RANK     | 40 | 42 | Shared by rank alone, since the exact search does not run on this computer. "
            + "Another way could bring up to 5 % more.",
    })
    @DisplayName("is said no surer than it is")
    void said(Standing standing, double served, double bound, String words) {
        assertThat(SharingText.proof(new Proof(standing, served, bound))).isEqualTo(words);
    }
}
