package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A sheet with defects for guillotine cuts: first cut into clean parts, each of which is then filled by itself. While
 * it is empty, each way to part it is open.
 */
final class PartedSpace extends SheetSpace {

    private final List<CleanPart> parts;
    private final List<SheetSpace> spaces;

    private PartedSpace(int width, int height, List<CleanPart> parts, List<SheetSpace> spaces) {
        super(width, height);
        this.parts = parts;
        this.spaces = spaces;
    }

    static SheetSpace blank(Stock stock, int margin) {
        List<CleanPart> parts = CleanPart.of(stock, margin);
        List<SheetSpace> spaces = new ArrayList<>();
        parts.forEach(p -> spaces.add(new GuillotineSpace(p.width() + margin, p.height() + margin)));
        return new PartedSpace(stock.width() + margin, stock.height() + margin, parts, spaces);
    }

    @Override
    SheetSpace copy() {
        return new PartedSpace(width, height, parts,
            spaces.stream().map(SheetSpace::copy).toList()).withFreeArea(freeArea());
    }

    @Override
    SheetSpace sized(int newWidth, int newHeight) {
        throw new IllegalStateException("a sheet with defects keeps its size");
    }

    @Override
    boolean takes(int blankWidth, int blankHeight) {
        return spaces.stream().anyMatch(s -> s.takes(blankWidth, blankHeight));
    }

    @Override
    void offer(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot) {
        CleanPart.Parting parting = parting();
        for (int i = 0; i < spaces.size(); i++) {
            if (parting != null && parting != parts.get(i).parting()) {
                continue;
            }
            spaces.get(i).offer(blankWidth, blankHeight, rule, random, spot);
            if (spot.space == spaces.get(i)) {
                spot.space = this;
                spot.part = i;
            }
        }
    }

    @Override
    long covers(int blankWidth, int blankHeight) {
        CleanPart.Parting parting = parting();
        long most = 0;
        for (int i = 0; i < spaces.size(); i++) {
            if (parting == null || parting == parts.get(i).parting()) {
                most = Math.max(most, spaces.get(i).covers(blankWidth, blankHeight));
            }
        }
        return most;
    }

    /** How the sheet is parted; null while it is empty. */
    private CleanPart.Parting parting() {
        for (int i = 0; i < spaces.size(); i++) {
            if (spaces.get(i).size() > 0) {
                return parts.get(i).parting();
            }
        }
        return null;
    }

    @Override
    void join(Blank blank, Spot spot) {
        spaces.get(spot.part).place(blank, spot);
    }

    @Override
    void drop(boolean[] removed) {
        int from = 0;
        for (SheetSpace space : spaces) {
            int to = from + space.size();
            space.remove(Arrays.copyOfRange(removed, from, to));
            from = to;
        }
    }

    @Override
    List<Placed> placed() {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < spaces.size(); i++) {
            CleanPart part = parts.get(i);
            spaces.get(i).placed().forEach(p -> placed.add(
                new Placed(p.blank(), part.left() + p.x(), part.low() + p.y(), p.width(), p.height())));
        }
        return placed;
    }

    @Override
    int size() {
        return spaces.stream().mapToInt(SheetSpace::size).sum();
    }
}
