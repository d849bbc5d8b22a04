package unthrum.reading;

/** Says in plain words why a text is not YAML. */
final class SyntaxProblem {
    private SyntaxProblem() {
    }

    /** @param said the parser's own words */
    static Problem of(String file, String said, int line, int column) {
        if (said.contains("TAB") || said.contains("tab character")) {
            return new Problem(file, line, column, "a tab", "spaces", "replace every tab by spaces");
        }
        if (said.contains("mapping values are not allowed")) {
            return new Problem(file, line, column, "a second colon in one line", "one key and one value in a line",
                    "put text that holds a colon in quotes, or begin a new line");
        }
        if (said.contains("expected <block end>")) {
            return new Problem(file, line, column, "an indent that fits no line above",
                    "the keys of one block in the same column", "line this up with the keys that it belongs to");
        }
        if (said.contains("could not find expected ':'")) {
            return new Problem(file, line, column, "the line before has no colon", "a key, a colon and a value",
                    "write it as 'key: value'");
        }
        if (said.contains("found unexpected end of stream")) {
            return new Problem(file, line, column, "the file ends inside quotes", "a closing quote",
                    "close the quotes");
        }
        if (said.contains("expected ',' or")) {
            return new Problem(file, line, column, "a bracket is still open here", "a comma or the closing bracket",
                    "close the bracket that was opened before");
        }
        return new Problem(file, line, column, "this is not YAML (" + said + ")", "keys and values",
                "put the value in quotes, or see the survey format in the README");
    }
}
