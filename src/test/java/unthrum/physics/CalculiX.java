package unthrum.physics;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Solves a panel afresh with the finite-element solver ccx: writes the input deck, runs it, reads the frequencies. */
final class CalculiX {

    private final StringBuilder deck = new StringBuilder();
    private final Sheet sheet;
    private final Bay bay;
    private final int across;
    private final int up;
    /** Places and heights of the lines of nodes across a pressed section; empty where the bay is evenly curved. */
    private final double[][] section;

    private CalculiX(Sheet sheet, Bay bay, int across, int up, double[][] section) {
        this.sheet = sheet;
        this.bay = bay;
        this.across = across;
        this.up = up;
        this.section = section;
    }

    static boolean isInstalled() {
        try {
            Process process = new ProcessBuilder("ccx", "-v").redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor(20, TimeUnit.SECONDS);
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** The lowest frequencies, Hz, with that many elements along the length and the width. */
    static List<Double> frequencies(Path folder, Sheet sheet, Bay bay, Support support, int across, int up)
            throws IOException, InterruptedException {
        return solve(folder, new CalculiX(sheet, bay, across, up, new double[0][]).write(support));
    }

    /**
     * The same for a flat bay with a pressed section all along its length: places and heights of the lines of nodes,
     * corners and mid-sides in turn. Hold the edges in their plane.
     */
    static List<Double> pressed(Path folder, Sheet sheet, Bay bay, Support support, int across, double[][] section)
            throws IOException, InterruptedException {
        return solve(folder, new CalculiX(sheet, bay, across, section.length / 2, section).write(support));
    }

    private static List<Double> solve(Path folder, String deck) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("panel.inp"), deck);
        Process process = new ProcessBuilder("ccx", "panel")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("panel.log").toFile())
                .start();
        if (!process.waitFor(300, TimeUnit.SECONDS) || process.exitValue() != 0) {
            process.destroyForcibly();
            throw new IOException("ccx failed: " + Files.readString(folder.resolve("panel.log")));
        }
        return read(Files.readAllLines(folder.resolve("panel.dat")));
    }

    private static List<Double> read(List<String> lines) {
        List<Double> frequencies = new ArrayList<>();
        for (String line : lines) {
            String[] words = line.trim().split("\\s+");
            if (words.length == 5 && words[0].matches("\\d+")) {
                frequencies.add(Double.parseDouble(words[3]));
            } else if (!frequencies.isEmpty()) {
                break;
            }
        }
        return frequencies;
    }

    private String write(Support support) {
        nodes();
        elements();
        line("*MATERIAL,NAME=SKIN");
        line("*ELASTIC");
        line("%.6e,%.4f", sheet.youngsModulus(), sheet.poissonRatio());
        line("*DENSITY");
        line("%.6e", sheet.density());
        line("*SHELL SECTION,ELSET=SKIN,MATERIAL=SKIN");
        line("%.6e", sheet.thickness());
        edges(support);
        line("*STEP");
        line("*FREQUENCY");
        line("4");
        line("*END STEP");
        return deck.toString();
    }

    /** Corners and mid-sides of eight-node elements, on arcs along both sides. */
    private void nodes() {
        line("*NODE");
        for (int i = 0; i <= 2 * across; i++) {
            for (int j = 0; j <= 2 * up; j++) {
                if (i % 2 == 0 || j % 2 == 0) {
                    double s = bay.length() * (i / (2.0 * across) - 0.5);
                    double t = bay.width() * (j / (2.0 * up) - 0.5);
                    double[] x = arc(s, bay.lengthCurvature());
                    double[] y = section.length > 0 ? section[j] : arc(t, bay.widthCurvature());
                    line("%d,%.9e,%.9e,%.9e", node(i, j), x[0], y[0], x[1] + y[1]);
                }
            }
        }
    }

    private static double[] arc(double s, double curvature) {
        return curvature == 0
                ? new double[] {s, 0}
                : new double[] {Math.sin(s * curvature) / curvature, (Math.cos(s * curvature) - 1) / curvature};
    }

    private void elements() {
        line("*ELEMENT,TYPE=S8R,ELSET=SKIN");
        int element = 1;
        for (int i = 0; i < 2 * across; i += 2) {
            for (int j = 0; j < 2 * up; j += 2) {
                line("%d,%d,%d,%d,%d,%d,%d,%d,%d", element++, node(i, j), node(i + 2, j), node(i + 2, j + 2),
                        node(i, j + 2), node(i + 1, j), node(i + 2, j + 1), node(i + 1, j + 2), node(i, j + 1));
            }
        }
    }

    /** Ends lie across the length, sides along it. A rolled bay slides in the cylinder's own directions. */
    private void edges(Support support) {
        line("*NSET,NSET=ENDS");
        for (int j = 0; j <= 2 * up; j++) {
            line("%d,%d", node(0, j), node(2 * across, j));
        }
        line("*NSET,NSET=SIDES");
        for (int i = 0; i <= 2 * across; i++) {
            line("%d,%d", node(i, 0), node(i, 2 * up));
        }
        boolean sliding = !support.fixed() && !bay.isFlat();
        if (sliding) {
            line("*NSET,NSET=EDGES");
            line("ENDS,SIDES");
            line("*TRANSFORM,TYPE=C,NSET=EDGES");
            line("0,0,%1$.9e,1,0,%1$.9e", -1 / bay.widthCurvature());
        }
        line("*BOUNDARY");
        line(sliding ? "ENDS,1,2" : "ENDS,1,3");
        line(sliding ? "SIDES,1,1" : "SIDES,1,3");
        if (sliding) {
            line("SIDES,3,3");
        }
        if (support.clamped()) {
            line("ENDS,4,6");
            line("SIDES,4,6");
        }
    }

    private int node(int i, int j) {
        return 1 + i * (2 * up + 1) + j;
    }

    private void line(String format, Object... values) {
        deck.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
