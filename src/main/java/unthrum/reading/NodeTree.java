package unthrum.reading;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds the nodes of one YAML document from the parser's events. What could make a small text large or deep is
 * refused where it stands: anchors, aliases, tags, deep nesting, a second document, too many entries.
 */
final class NodeTree {
    /** A survey nests six deep. */
    static final int MAX_DEPTH = 30;
    /** Bounds memory: about a hundred bytes an entry. */
    static final int MAX_NODES = 200_000;

    private final String file;
    private final Parser parser;
    private int nodes;

    private NodeTree(String file, String text) {
        this.file = file;
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(SourceText.MAX_BYTES);
        this.parser = new ParserImpl(new StreamReader(text), options);
    }

    /** The one document of the text. */
    static Node of(String file, String text) {
        NodeTree tree = new NodeTree(file, text);
        try {
            return tree.document();
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark() != null ? e.getProblemMark() : e.getContextMark();
            throw new Problems(SyntaxProblem.of(file, e.getProblem(), mark.getLine() + 1, mark.getColumn() + 1));
        } catch (YAMLException e) {
            throw new Problems(SyntaxProblem.of(file, e.getMessage(), 1, 1));
        }
    }

    private Node document() {
        parser.getEvent();
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            throw new Problems(new Problem(file, 1, 1, "an empty file", "keys and values",
                    "fill it in, or begin with a starter survey"));
        }
        parser.getEvent();
        Node root = node(parser.getEvent(), 0);
        parser.getEvent();
        Event next = parser.getEvent();
        if (!next.is(Event.ID.StreamEnd)) {
            throw refused(next, "a second document begins", "one document in a file",
                    "delete this line or move what follows to a file of its own");
        }
        return root;
    }

    private Node node(Event event, int depth) {
        if (depth > MAX_DEPTH) {
            throw refused(event, "more than " + MAX_DEPTH + " blocks inside one another", "a flat list of keys",
                    "check the brackets and the indent");
        }
        if (++nodes > MAX_NODES) {
            throw refused(event, "more than " + MAX_NODES + " entries", "a text written by hand", "split the file");
        }
        refuseReferences((NodeEvent) event);
        int line = event.getStartMark().getLine() + 1;
        int column = event.getStartMark().getColumn() + 1;
        if (event instanceof ScalarEvent scalar) {
            boolean quoted = scalar.getScalarStyle() != ScalarStyle.PLAIN;
            return new Node.Scalar(scalar.getValue().strip(), quoted, line, column);
        }
        return event instanceof SequenceStartEvent
                ? new Node.Sequence(items(depth), line, column)
                : new Node.Mapping(entries(depth), line, column);
    }

    private List<Node> items(int depth) {
        List<Node> items = new ArrayList<>();
        for (Event next = parser.getEvent(); !next.is(Event.ID.SequenceEnd); next = parser.getEvent()) {
            items.add(node(next, depth + 1));
        }
        return items;
    }

    private List<Node.Entry> entries(int depth) {
        List<Node.Entry> entries = new ArrayList<>();
        for (Event next = parser.getEvent(); !next.is(Event.ID.MappingEnd); next = parser.getEvent()) {
            Node key = node(next, depth + 1);
            entries.add(new Node.Entry(key, node(parser.getEvent(), depth + 1)));
        }
        return entries;
    }

    private void refuseReferences(NodeEvent event) {
        if (event instanceof AliasEvent) {
            throw refused(event, "the alias '*" + event.getAnchor() + "'", "a value", "write the value out here");
        }
        if (event.getAnchor() != null) {
            throw refused(event, "the anchor '&" + event.getAnchor() + "'", "a value",
                    "delete the anchor and write each value out where it belongs");
        }
        String tag = event instanceof ScalarEvent scalar ? scalar.getTag()
                : event instanceof SequenceStartEvent sequence ? sequence.getTag()
                : ((MappingStartEvent) event).getTag();
        if (tag != null) {
            throw refused(event, "the tag '" + tag + "'", "a plain value", "delete the tag");
        }
    }

    private Problems refused(Event event, String found, String expected, String remedy) {
        Mark mark = event.getStartMark();
        return new Problems(new Problem(file, mark.getLine() + 1, mark.getColumn() + 1, found, expected, remedy));
    }
}
