package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.cutting.SheetLayout;
import unthrum.pieces.Bench;
import unthrum.pieces.CutPlan;
import unthrum.pieces.MaterialCut;
import unthrum.pieces.Wishes;
import unthrum.plan.Plan;
import unthrum.survey.SurveyReader;

@DisplayName("Cutting as text and JSON")
class CutTextTest {

    private static final Map<Path, CutPlan> CUTS = new ConcurrentHashMap<>();

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    private static CutPlan cut(Path file) {
        return CUTS.computeIfAbsent(file, f -> Bench.cut(Scenarios.plan(f), Wishes.usual()));
    }

    private static CutPlan hatchback(String stock, String money) throws IOException {
        String text = Files.readString(Path.of("scenarios/one-pack-hatchback.yaml"))
                .replace("stock:\n  - {material: butyl-2, sheets: 12}\n", stock).replace("money: 45 EUR", "money: " + money);
        Plan plan = Scenarios.PLANNER.plan(SurveyReader.read("hatchback.yaml",
                new java.io.ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))));
        return Bench.cut(plan, Wishes.usual());
    }

    private static String flat(CutPlan cut) {
        return CutText.of(cut, 80, Style.PLAIN).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("never run past their width and name every piece with its panel")
    void width(Path file) {
        for (int width : new int[] {80, 120}) {
            String text = CutText.of(cut(file), width, Style.PLAIN);
            assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
            cut(file).cuts().forEach(c -> c.pieces().forEach(p -> assertThat(text)
                    .containsPattern("(?m)^ *" + p.number() + "  " + p.place().panel() + " ")));
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("keep to the published schema")
    void schema(Path file) throws IOException {
        var schema = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(getClass().getResourceAsStream("/unthrum/cut.schema.json"));
        String json = CutJson.of(cut(file));
        assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
        assertThat(new ObjectMapper().readTree(json).get("materials")).hasSameSizeAs(cut(file).cuts());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("sketch each sheet with a frame and a number for every piece that is wide enough for one")
    void sketches(Path file) {
        cut(file).cuts().forEach(c -> c.layout().sheets().forEach(s -> sketch(c, s)));
    }

    private static void sketch(MaterialCut cut, SheetLayout sheet) {
        List<String> lines = SheetSketch.lines(sheet, cut.byName(), 80);
        assertThat(lines).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
        assertThat(lines.get(0)).startsWith("+-").endsWith("+");
        String drawn = String.join("\n", lines);
        sheet.placements().stream().filter(p -> Math.min(p.width(), p.height()) * 5
                > Math.max(sheet.stock().width(), SheetSketch.height(sheet))).forEach(p ->
                assertThat(drawn).contains(p.piece().substring(0, p.piece().indexOf(' '))));
    }

    @Test
    @DisplayName("tell of keyholes, folds and relief cuts, and sketch them")
    void shapes() {
        CutPlan cut = Bench.cut("vinyl-barrier-2", 1, Bench.panel("wall", 800, 600,
                "ribs: [{kind: fold, runs: across, at: 300 mm}, {kind: fold, runs: along, at: 450 mm}]",
                "openings: [{kind: grommet, size: 30 mm, state: closed, at: [600 mm, 100 mm]}]"));
        assertThat(flat(cut)).contains("Keyhole, round 30 mm for grommet 1, middle 600 mm along and 100 mm across.",
                "Slit to the keyhole from the edge, 85 mm across at 600 mm along.", "Bends over a fold at 300 mm along.",
                "Relief cut from the edge to the corner of the folds, 150 mm across at 300 mm along;");
        List<String> lines = SheetSketch.lines(cut.cuts().get(0).layout().sheets().get(0), cut.cuts().get(0).byName(), 80);
        assertThat(String.join("", lines)).contains("o", "/", ":");
    }

    @Test
    @DisplayName("say how bulging metal wants its sheet cut: limp sheet laps, soft foam loses a wedge")
    void bulges() {
        String arch = Bench.panel("arch", 760, 420, "ribs: none")
                .replace("shape: flat", "shape: {curve: crowned, rise: 60 mm}");
        assertThat(flat(Bench.cut("vinyl-barrier-2", 1, arch))).containsPattern(
                "relief cuts in each long side, evenly spaced, \\d+ mm deep: the edges lap by \\d+ mm at the rim");
        assertThat(flat(Bench.cut("pe-foam-6", 1, arch))).containsPattern("take out a wedge \\d+ mm wide at the rim");
    }

    @Test
    @DisplayName("of a shield larger than any sheet name piece, panel and the nearest way out")
    void tooLarge() {
        assertThat(flat(Bench.cut("aluminium-shield-1", 1, Bench.panel("tunnel", 1400, 400, "ribs: none")))).contains(
                "Piece 1 of tunnel (1400 × 400 mm): larger than any ", " of aluminium-shield-1, which is not joined."
                        + " Nearest way out: order it to size, or take another material there.");
    }

    @Test
    @DisplayName("with no money and nothing in stock say what is left out and the nearest way out")
    void noMoney() throws IOException {
        assertThat(flat(hatchback("", "0 EUR"))).contains("Nothing to cut: the plan lays no sheet and no roll.",
                "for door-front-left is left out for want of money.", "Nearest way out: a pack of ", " EUR, which serves ");
    }

    @Test
    @DisplayName("with too few sheets and no money name the pieces, their panels and the pack that would do")
    void tooFew() throws IOException {
        CutPlan cut = hatchback("stock: [{material: butyl-2, sheets: 4}, {material: butyl-2, size: [160 mm, 100 mm],"
                + " sheets: 20}]\n", "10 EUR");
        assertThat(cut.shortfalls()).isNotEmpty();
        assertThat(flat(cut)).contains("What cannot be cut").containsPattern(
                "Pieces? \\w+ of [a-z-]+ \\(\\d+ × \\d+ mm\\).*: no room on the butyl-2 that is in stock and in the plan,"
                        + " and the client's money buys no more, so the last in the plan's ranking goes without."
                        + " Nearest way out: 1 pack more for 60 EUR, or leave out");
    }

    @Test
    @DisplayName("of a vehicle on which nothing is wanted say so, and what says why")
    void nothing() {
        CutPlan cut = Bench.cut(Bench.advised("", Bench.panel("floor", 100, 100, "tap: dead", "reach: none")),
                Wishes.usual());
        assertThat(flat(cut)).contains("No panel gets a layer yet: 'unthrum advise' says why");
    }
}
