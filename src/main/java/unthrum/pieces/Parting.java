package unthrum.pieces;

import java.util.List;

/** How a face that is larger than a sheet is parted. */
public enum Parting {
    /** The way that gives fewest pieces: what a fitter likes best. */
    FEWEST_PIECES {
        @Override
        List<SheetSize> ways(SheetSize sheet) {
            return sheet.ways();
        }
    },
    /** All sheets with their length along the panel. */
    ALONG {
        @Override
        List<SheetSize> ways(SheetSize sheet) {
            return sheet.ways().subList(0, 1);
        }
    },
    /** All sheets with their length across the panel, where they may lie so. */
    ACROSS {
        @Override
        List<SheetSize> ways(SheetSize sheet) {
            return sheet.ways().subList(sheet.ways().size() - 1, sheet.ways().size());
        }
    };

    abstract List<SheetSize> ways(SheetSize sheet);
}
