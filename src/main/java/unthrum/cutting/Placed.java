package unthrum.cutting;

/** A blank at its place; width and height as it lies. */
record Placed(Blank blank, int x, int y, int width, int height) {

    int right() {
        return x + width;
    }

    int top() {
        return y + height;
    }

    Placed at(int newX, int newY) {
        return new Placed(blank, newX, newY, width, height);
    }

    boolean turned() {
        return width != blank.width();
    }

    /** Back in the task's terms, without the knife margin. */
    Placement placement(CuttingTask task) {
        int margin = task.knifeMargin();
        return new Placement(task.pieces().get(blank.piece()).name(), x, y, width - margin, height - margin, turned());
    }
}
