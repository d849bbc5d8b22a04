package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;

/** A node of a slicing tree: a blank, a row of parts side by side, or a column of parts one above the other. */
final class Node {

    final Blank blank;
    final boolean row;
    final List<Node> parts;
    Node parent;
    /** What it needs. */
    int width;
    int height;
    /** What it could have if it took all the slack. */
    int roomWidth;
    int roomHeight;

    private Node(Blank blank, boolean row, List<Node> parts) {
        this.blank = blank;
        this.row = row;
        this.parts = parts;
    }

    static Node leaf(Blank blank, int width, int height) {
        Node leaf = new Node(blank, false, List.of());
        leaf.width = width;
        leaf.height = height;
        return leaf;
    }

    private static Node stack(boolean row) {
        return new Node(null, row, new ArrayList<>());
    }

    Node copy() {
        if (blank != null) {
            return leaf(blank, width, height);
        }
        Node copy = stack(row);
        for (Node part : parts) {
            copy.add(part.copy());
        }
        return copy;
    }

    /** Whether a new part beside (or above) this node is a layout of its own, not one that another node offers too. */
    boolean joins(boolean sideways) {
        return blank == null ? row == sideways || parent == null : parent == null || parent.row != sideways;
    }

    /** What a new part beside (or above) this node could have. */
    int gapWidth(boolean sideways) {
        return sideways ? roomWidth - width : roomWidth;
    }

    int gapHeight(boolean sideways) {
        return sideways ? roomHeight : roomHeight - height;
    }

    /** How well a new part fits: by the gap it would get, counting a step between it and this node as loss. */
    long score(boolean sideways, int newWidth, int newHeight, FitRule rule) {
        return sideways
            ? rule.score(roomWidth - width, Math.max(height, newHeight), newWidth, Math.min(height, newHeight))
            : rule.score(Math.max(width, newWidth), roomHeight - height, Math.min(width, newWidth), newHeight);
    }

    /** Joins the leaf to this node and gives back the tree's root. */
    Node join(Node leaf, boolean sideways, Node root) {
        if (blank == null && row == sideways) {
            add(leaf);
            return root;
        }
        Node above = parent;
        Node stack = stack(sideways);
        if (above != null) {
            above.parts.set(above.parts.indexOf(this), stack);
            stack.parent = above;
        }
        stack.add(this);
        stack.add(leaf);
        return above == null ? stack : root;
    }

    private void add(Node part) {
        part.parent = this;
        parts.add(part);
    }

    /** The tree without the marked leaves, counted in the order of {@link #collect}; null when nothing is left. */
    Node without(boolean[] removed, int[] leaf) {
        if (blank != null) {
            return removed[leaf[0]++] ? null : this;
        }
        List<Node> old = List.copyOf(parts);
        parts.clear();
        for (Node part : old) {
            Node left = part.without(removed, leaf);
            if (left == null) {
                continue;
            }
            if (left.blank == null && left.row == row) {
                List.copyOf(left.parts).forEach(this::add);
            } else {
                add(left);
            }
        }
        return parts.isEmpty() ? null : parts.size() == 1 ? parts.get(0) : this;
    }

    /** Works out what every node needs, from the leaves up. */
    void measure() {
        if (blank != null) {
            return;
        }
        width = 0;
        height = 0;
        for (Node part : parts) {
            part.measure();
            width = row ? width + part.width : Math.max(width, part.width);
            height = row ? Math.max(height, part.height) : height + part.height;
        }
    }

    /** Works out what every node could have, from the root down, and lists the nodes. */
    void give(int newRoomWidth, int newRoomHeight, List<Node> nodes) {
        roomWidth = newRoomWidth;
        roomHeight = newRoomHeight;
        nodes.add(this);
        for (Node part : parts) {
            part.give(row ? roomWidth - width + part.width : roomWidth,
                row ? roomHeight : roomHeight - height + part.height, nodes);
        }
    }

    void collect(int x, int y, List<Placed> placed) {
        if (blank != null) {
            placed.add(new Placed(blank, x, y, width, height));
            return;
        }
        int at = row ? x : y;
        for (Node part : parts) {
            part.collect(row ? at : x, row ? y : at, placed);
            at += row ? part.width : part.height;
        }
    }
}
