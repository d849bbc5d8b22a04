package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import unthrum.Scenarios;
import unthrum.cutting.CutRule;
import unthrum.pieces.Bench;
import unthrum.pieces.CutPlan;
import unthrum.pieces.MaterialCut;
import unthrum.pieces.Wishes;

@DisplayName("Drawings of sheets")
class SheetDrawingTest {

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    private static Element svg(String drawing) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(drawing.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
    }

    private static List<Element> all(Element svg, String name) {
        NodeList nodes = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static List<String> words(Element svg) {
        return java.util.stream.Stream.of("text", "tspan").flatMap(name -> all(svg, name).stream())
                .map(Element::getTextContent).toList();
    }

    /** The area inside a path's first outline less its holes. */
    private static double area(String path) {
        List<Double> areas = new ArrayList<>();
        for (String outline : path.split("M ")) {
            if (!outline.isBlank()) {
                areas.add(outlineArea(outline.replace(" Z", "").trim().split(" L ")));
            }
        }
        return areas.get(0) - areas.subList(1, areas.size()).stream().mapToDouble(a -> a).sum();
    }

    /** By the surveyor's formula (Gauss's, common knowledge). */
    private static double outlineArea(String[] points) {
        double twice = 0;
        for (int i = 0; i < points.length; i++) {
            String[] a = points[i].trim().split(" ");
            String[] b = points[(i + 1) % points.length].trim().split(" ");
            twice += Double.parseDouble(a[0]) * Double.parseDouble(b[1])
                    - Double.parseDouble(b[0]) * Double.parseDouble(a[1]);
        }
        return Math.abs(twice) / 2;
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("are well-formed and in true scale: a unit is a millimetre on paper")
    void scale(Path file) throws Exception {
        CutPlan cut = Bench.cut(Scenarios.plan(file), Wishes.usual());
        Map<String, String> drawings = CutDrawings.of(cut);
        assertThat(drawings).hasSize(cut.cuts().stream().mapToInt(c -> c.layout().sheets().size()).sum());
        for (String drawing : drawings.values()) {
            Element svg = svg(drawing);
            String[] box = svg.getAttribute("viewBox").split(" ");
            assertThat(svg.getAttribute("width")).isEqualTo(box[2] + "mm");
            assertThat(svg.getAttribute("height")).isEqualTo(box[3] + "mm");
        }
    }

    @Test
    @DisplayName("show every piece with its number, panel and size, and its outline has its area")
    void pieces() throws Exception {
        CutPlan cut = Bench.cut(Scenarios.plan("shell-pickup"), Wishes.usual().cuts(CutRule.GUILLOTINE));
        List<String> drawings = List.copyOf(CutDrawings.of(cut).values());
        int drawn = 0;
        for (MaterialCut material : cut.cuts()) {
            var pieces = material.byName();
            for (var sheet : material.layout().sheets()) {
                Element svg = svg(drawings.get(drawn++));
                List<Element> paths = all(svg, "path");
                assertThat(paths).hasSameSizeAs(sheet.placements());
                for (int i = 0; i < paths.size(); i++) {
                    var piece = pieces.get(sheet.placements().get(i).piece());
                    assertThat(area(paths.get(i).getAttribute("d")) / 1e6).isCloseTo(piece.area(), within(1e-4));
                    assertThat(words(svg)).contains(piece.number(), piece.place().panel());
                }
            }
        }
    }

    @Test
    @DisplayName("show keyhole, slit, folds and relief cuts, with a letter at each and its measures in the key")
    void key() throws Exception {
        String drawing = CutDrawings.of(Bench.cut("vinyl-barrier-2", 1, Bench.panel("wall", 800, 600,
                "ribs: [{kind: fold, runs: across, at: 300 mm}, {kind: fold, runs: along, at: 450 mm}]",
                "openings: [{kind: grommet, size: 30 mm, state: closed, at: [600 mm, 100 mm]}]"))).values()
                .iterator().next();
        List<String> words = words(svg(drawing));
        assertThat(words).contains("A", "B", "C", "D", "E").anySatisfy(w -> assertThat(w).contains("1: keyhole 30 at "))
                .anySatisfy(w -> assertThat(w).matches("B  1: slit 85 long at \\d+ (right|up)"))
                .anySatisfy(w -> assertThat(w).matches("E  1: relief cut 150 long at \\d+ (right|up)"));
        assertThat(all(svg(drawing), "line").stream().filter(l -> l.hasAttribute("stroke-dasharray"))).hasSize(2);
    }

    @Test
    @DisplayName("give the edges to mark from, the middle of a hole, and a line to hold a ruler against")
    void dimensions() throws Exception {
        CutPlan cut = Bench.cut(Bench.advised("", Bench.panel("'arch <left> & \"rear\"'", 600, 500, "ribs: none",
                "near noise: road", "near ear: yes", "tap: rings", "clearance: 60 mm", "clearance to: trim",
                "heat: none", "reach: open", "wet: dry", "behind: none",
                "surface: {paint: sound, dirt: dust, rust: none, old: none}",
                "fixings: [{kind: lining clip, at: [300 mm, 250 mm], size: 20 mm}]")), Wishes.usual());
        assertThat(cut.cuts()).isNotEmpty();
        for (String drawing : CutDrawings.of(cut).values()) {
            List<String> words = words(svg(drawing));
            assertThat(words).contains("0", "100 mm when printed at full size", "arch <left> & \"rear\"");
        }
        assertThat(CutDrawings.of(cut).values()).anySatisfy(d -> assertThat(d).contains(": round 30 at "));
    }
}
