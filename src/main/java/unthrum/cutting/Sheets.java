package unthrum.cutting;

import java.util.Arrays;
import java.util.List;

/** The sheets of a search. What a round changes can be undone until the next round begins. */
final class Sheets {

    private final SheetSpace[] now;
    private final SheetSpace[] before;

    Sheets(List<SheetSpace> spaces) {
        this.now = spaces.stream().map(SheetSpace::copy).toArray(SheetSpace[]::new);
        this.before = new SheetSpace[now.length];
    }

    int count() {
        return now.length;
    }

    /** The sheet to look at. */
    SheetSpace get(int sheet) {
        return now[sheet];
    }

    /** The sheet to change. */
    SheetSpace change(int sheet) {
        if (before[sheet] == null) {
            before[sheet] = now[sheet];
            now[sheet] = now[sheet].copy();
        }
        return now[sheet];
    }

    void beginRound() {
        Arrays.fill(before, null);
    }

    void undo() {
        for (int i = 0; i < now.length; i++) {
            now[i] = before[i] == null ? now[i] : before[i];
        }
    }

    List<SheetSpace> copies() {
        return Arrays.stream(now).map(SheetSpace::copy).toList();
    }
}
