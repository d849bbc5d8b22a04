package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A sheet for guillotine cuts, kept as a slicing tree: a leaf is a blank, a row or a column is a number of parts with
 * edge-to-edge cuts between them. Each node knows what it needs and what it could have if it took all slack up to
 * the root; a blank may be joined to a node if the grown node still fits there. Any tree whose root fits is a
 * layout that can be cut. After Gardeyn and Wauters, 'A goal-driven ruin and recreate heuristic for the 2D
 * variable-sized bin packing problem with guillotine constraints', EJOR 301 (2022), with slack in place of waste nodes.
 */
final class GuillotineSpace extends SheetSpace {

    private Node root;
    private final List<Node> nodes = new ArrayList<>();
    private int leaves;

    GuillotineSpace(int width, int height) {
        super(width, height);
    }

    @Override
    SheetSpace copy() {
        return sized(width, height).withFreeArea(freeArea());
    }

    @Override
    SheetSpace sized(int newWidth, int newHeight) {
        GuillotineSpace sized = new GuillotineSpace(newWidth, newHeight);
        sized.root = root == null ? null : root.copy();
        sized.refresh();
        return sized;
    }

    @Override
    int size() {
        return leaves;
    }

    @Override
    List<Placed> placed() {
        List<Placed> placed = new ArrayList<>(leaves);
        if (root != null) {
            root.collect(0, 0, placed);
        }
        return placed;
    }

    @Override
    boolean takes(int blankWidth, int blankHeight) {
        return blankWidth <= width && blankHeight <= height;
    }

    @Override
    void offer(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot) {
        if (root == null) {
            if (blankWidth <= width && blankHeight <= height) {
                consider(rule.score(width, height, blankWidth, blankHeight), 0, true, blankWidth, blankHeight,
                    random, spot);
            }
            return;
        }
        for (int i = 0; i < nodes.size(); i++) {
            Node node = nodes.get(i);
            for (int way = 0; way < 2; way++) {
                boolean sideways = way == 0;
                if (node.joins(sideways)) {
                    if (node.gapWidth(sideways) >= blankWidth && node.gapHeight(sideways) >= blankHeight) {
                        consider(node.score(sideways, blankWidth, blankHeight, rule), i, sideways, blankWidth,
                            blankHeight, random, spot);
                    }
                }
            }
        }
    }

    @Override
    long covers(int blankWidth, int blankHeight) {
        long most = root == null ? (long) Math.min(blankWidth, width) * Math.min(blankHeight, height) : 0;
        for (Node node : nodes) {
            for (int way = 0; way < 2; way++) {
                boolean sideways = way == 0;
                if (node.joins(sideways)) {
                    most = Math.max(most, (long) Math.min(blankWidth, node.gapWidth(sideways))
                        * Math.min(blankHeight, node.gapHeight(sideways)));
                }
            }
        }
        return most;
    }

    private void consider(long score, int node, boolean sideways, int blankWidth, int blankHeight,
                          SplittableRandom random, Spot spot) {
        if (score < spot.score && !overlook(random)) {
            spot.take(score, this, node, sideways, blankWidth, blankHeight);
        }
    }

    @Override
    void join(Blank blank, Spot spot) {
        Node leaf = Node.leaf(blank, spot.width, spot.height);
        root = root == null ? leaf : nodes.get(spot.node).join(leaf, spot.sideways, root);
        refresh();
    }

    @Override
    void drop(boolean[] removed) {
        root = root == null ? null : root.without(removed, new int[1]);
        refresh();
    }

    /** Measures the tree anew. */
    private void refresh() {
        nodes.clear();
        leaves = 0;
        if (root != null) {
            root.parent = null;
            root.measure();
            root.give(width, height, nodes);
            for (Node node : nodes) {
                leaves += node.blank != null ? 1 : 0;
            }
        }
    }
}
