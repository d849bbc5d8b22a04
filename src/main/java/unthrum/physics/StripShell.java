package unthrum.physics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import unthrum.physics.Course.Station;
import unthrum.physics.Course.Stretch;
import unthrum.physics.Profile.Strip;
import unthrum.physics.SymmetricMatrix.Eigenpair;

/**
 * Lowest mode of a rectangular sheet made of straight strips that run along it, such as a panel with pressed beads: a
 * Ritz solution with each line's motion u along, v across, w out and turn θ about the line, cubics along. In-plane
 * inertia along is left out. Sources: the finite strip method for folded plates (Cheung) and the linear strains of a
 * thin surface (Koiter); from memory.
 */
final class StripShell {

    private static final int LINE = StripStrains.LINE;
    private static final int ORDERS = StripStrains.ORDERS;
    private static final int TERMS = StripStrains.TERMS;
    private static final int CUBICS = 4;
    private static final int LOCAL = 2 * LINE * CUBICS;
    /** Gauss's three points over 0 to 1, across a strip. */
    private static final double[] POINTS = {0.112701665379258, 0.5, 0.887298334620742};
    private static final double[] WEIGHTS = {0.277777777777778, 0.444444444444444, 0.277777777777778};

    private final Skin skin;
    private final Profile profile;
    private final Course course;
    /** Which unknown each line, node along, field, and value or slope is; −1 where it is held. */
    private final int[] unknowns;
    private final int nodes;
    private final BandMatrix stiffness;
    private final BandMatrix mass;

    private StripShell(Skin skin, Profile profile, Course course, Support support) {
        this.skin = skin;
        this.profile = profile;
        this.course = course;
        this.nodes = course.stretches().size() + 1;
        this.unknowns = new int[profile.lines() * nodes * LINE * 2];
        int size = number(support);
        this.stiffness = new BandMatrix(size, band());
        this.mass = new BandMatrix(size, band());
    }

    /** The lowest mode, only those alike on both sides of the middle being looked at where the course is half. */
    static Mode lowest(Skin skin, Profile profile, Course course, Support support) {
        return new StripShell(skin, profile, course, support).lowest();
    }

    private Mode lowest() {
        Part[][] parts = parts();
        for (int s = 0; s < parts.length; s++) {
            for (int strip = 0; strip < parts[s].length; strip++) {
                add(parts[s][strip], indices(strip, s));
            }
        }
        Eigenpair pair = Lanczos.lowest(stiffness, mass);
        double bent = 0;
        for (int s = 0; s < parts.length; s++) {
            for (int strip = 0; strip < parts[s].length; strip++) {
                bent += energy(pair.vector(), indices(strip, s), parts[s][strip].bending());
            }
        }
        return new Mode(Math.sqrt(pair.value()) / (2 * Math.PI), Math.min(1, bent / pair.value()), 1, 1);
    }

    /** What each strip of each stretch adds; strips that are alike share theirs. */
    private Part[][] parts() {
        Part[][] parts = new Part[course.stretches().size()][profile.lines() - 1];
        for (int s = 0; s < parts.length; s++) {
            Stretch stretch = course.stretches().get(s);
            double[][][][][] tables = stretch.stations().stream().map(t -> tables(stretch, t))
                    .toArray(double[][][][][]::new);
            Map<Strip, Part> known = new HashMap<>();
            for (int strip = 0; strip < parts[s].length; strip++) {
                parts[s][strip] = known.computeIfAbsent(profile.strip(strip), k -> part(stretch, k, tables));
            }
        }
        return parts;
    }

    private int number(Support support) {
        int next = 0;
        for (int i = 0; i < unknowns.length; i++) {
            boolean slope = i % 2 == 1;
            int field = i / 2 % LINE;
            int node = i / 2 / LINE % nodes;
            int line = i / 2 / LINE / nodes;
            boolean side = line == 0 || line == profile.lines() - 1;
            boolean middle = course.half() && node == 0;
            boolean end = node == nodes - 1 || node == 0 && !middle;
            boolean held = side && heldAtSide(field, support) || end && heldAtEnd(field, slope, support)
                    || middle && slope == (field > 0);
            unknowns[i] = held ? -1 : next++;
        }
        return next;
    }

    private static boolean heldAtSide(int field, Support support) {
        return switch (field) {
            case 1 -> support.fixed();
            case 3 -> support.clamped();
            default -> true;
        };
    }

    private static boolean heldAtEnd(int field, boolean slope, Support support) {
        return switch (field) {
            case 0 -> !slope && support.fixed();
            case 1 -> !slope;
            default -> !slope || support.clamped();
        };
    }

    /** A line's unknowns and those of two nodes along are all that lies between two that work together. */
    private int band() {
        int line = 0;
        int most = 0;
        for (int first = 0; first + nodes * LINE * 2 <= unknowns.length; first += nodes * LINE * 2) {
            int lines = 0;
            for (int i = first; i < first + nodes * LINE * 2; i++) {
                lines += unknowns[i] < 0 ? 0 : 1;
            }
            line = Math.max(line, lines);
        }
        most = line + 2 * LINE * 2;
        return most;
    }

    /** What one stretch of a strip adds. */
    private record Part(double[][] bending, double[][] stiffness, double[][] mass) {}

    /** Integrals along of each pair of cubics by their orders: [order][order][cubic][cubic]. */
    private static double[][][][] tables(Stretch stretch, Station station) {
        double[][][][] sums = new double[ORDERS][ORDERS][CUBICS][CUBICS];
        for (int q = 0; q < station.at().length; q++) {
            double weight = station.weights()[q] * stretch.length();
            for (int d = 0; d < ORDERS; d++) {
                double[] first = HermiteCubic.at(station.at()[q], d, stretch.length());
                for (int e = 0; e < ORDERS; e++) {
                    double[] second = HermiteCubic.at(station.at()[q], e, stretch.length());
                    for (int k = 0; k < CUBICS; k++) {
                        for (int l = 0; l < CUBICS; l++) {
                            sums[d][e][k][l] += weight * first[k] * second[l];
                        }
                    }
                }
            }
        }
        return sums;
    }

    private int[] indices(int strip, int stretch) {
        int[] indices = new int[LOCAL];
        for (int i = 0; i < LOCAL; i++) {
            int cubic = i % CUBICS;
            int field = i / CUBICS % LINE;
            int line = strip + i / CUBICS / LINE;
            int node = stretch + cubic / 2;
            indices[i] = unknowns[((line * nodes + node) * LINE + field) * 2 + cubic % 2];
        }
        return indices;
    }

    private Part part(Stretch stretch, Strip strip, double[][][][][] tables) {
        Part part = new Part(new double[LOCAL][LOCAL], new double[LOCAL][LOCAL], new double[LOCAL][LOCAL]);
        double nu = skin.poissonRatio();
        double membrane = skin.membraneStiffness() / (1 - nu * nu);
        for (int s = 0; s < tables.length; s++) {
            Station station = stretch.stations().get(s);
            double[][] bend = new double[TERMS][TERMS];
            double[][] stretched = new double[TERMS][TERMS];
            double[][] mass = new double[TERMS][TERMS];
            for (int q = 0; q < POINTS.length; q++) {
                StripStrains here = strip.at(station, POINTS[q]);
                double area = here.area() * WEIGHTS[q] * strip.width();
                isotropic(bend, here.bending(), skin.flexuralRigidity() * area, nu, 2 * (1 - nu));
                isotropic(stretched, here.stretching(), membrane * area, nu, (1 - nu) / 2);
                for (double[] motion : here.motion()) {
                    square(mass, motion, skin.surfaceDensity() * area);
                }
            }
            spread(part.bending, bend, tables[s]);
            spread(part.stiffness, stretched, tables[s]);
            spread(part.mass, mass, tables[s]);
        }
        for (int i = 0; i < LOCAL; i++) {
            for (int j = 0; j < LOCAL; j++) {
                part.stiffness[i][j] += part.bending[i][j];
            }
        }
        return part;
    }

    /** Adds c[(e₁ + νe₂)² + (1 − ν²)e₂² + s e₁₂²]. */
    private static void isotropic(double[][] sum, double[][] strains, double c, double nu, double shear) {
        double[] both = new double[TERMS];
        Arrays.setAll(both, i -> strains[0][i] + nu * strains[1][i]);
        square(sum, both, c);
        square(sum, strains[1], c * (1 - nu * nu));
        square(sum, strains[2], c * shear);
    }

    private static void square(double[][] sum, double[] row, double factor) {
        for (int i = 0; i < TERMS; i++) {
            if (row[i] != 0) {
                for (int j = 0; j < TERMS; j++) {
                    sum[i][j] += factor * row[i] * row[j];
                }
            }
        }
    }

    /** Each entry across times its integrals along. */
    private static void spread(double[][] local, double[][] entries, double[][][][] tables) {
        for (int a = 0; a < TERMS; a++) {
            for (int b = 0; b < TERMS; b++) {
                double entry = entries[a][b];
                if (entry != 0) {
                    double[][] table = tables[a % ORDERS][b % ORDERS];
                    for (int k = 0; k < CUBICS; k++) {
                        for (int l = 0; l < CUBICS; l++) {
                            local[a / ORDERS * CUBICS + k][b / ORDERS * CUBICS + l] += entry * table[k][l];
                        }
                    }
                }
            }
        }
    }

    private void add(Part part, int[] indices) {
        for (int i = 0; i < LOCAL; i++) {
            for (int j = 0; j < LOCAL; j++) {
                if (indices[j] >= 0 && indices[i] >= indices[j]) {
                    stiffness.add(indices[i], indices[j], part.stiffness[i][j]);
                    mass.add(indices[i], indices[j], part.mass[i][j]);
                }
            }
        }
    }

    private static double energy(double[] all, int[] indices, double[][] local) {
        double[] x = new double[LOCAL];
        Arrays.setAll(x, i -> indices[i] < 0 ? 0 : all[indices[i]]);
        double sum = 0;
        for (int i = 0; i < LOCAL; i++) {
            sum += x[i] * SymmetricMatrix.dot(local[i], x);
        }
        return sum;
    }
}
