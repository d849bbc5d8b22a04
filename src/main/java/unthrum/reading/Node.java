package unthrum.reading;

import java.util.List;

/** A piece of a YAML text with the place where it starts, lines and columns counted from 1. */
sealed interface Node {
    /** How much of a value an error message repeats. */
    int SHOWN = 60;

    int line();

    int column();

    /** What stands there, for a message. */
    String shown();

    record Scalar(String text, boolean quoted, int line, int column) implements Node {
        /** Whether the value was left out: {@code key:} with nothing after it, or YAML's own words for that. */
        boolean nothing() {
            return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }

        @Override
        public String shown() {
            if (nothing()) {
                return "nothing";
            }
            return "'" + (text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text).replace('\n', ' ') + "'";
        }
    }

    record Sequence(List<Node> items, int line, int column) implements Node {
        @Override
        public String shown() {
            return "a list";
        }
    }

    record Mapping(List<Entry> entries, int line, int column) implements Node {
        @Override
        public String shown() {
            return "a block of keys";
        }
    }

    record Entry(Node key, Node value) {
    }
}
