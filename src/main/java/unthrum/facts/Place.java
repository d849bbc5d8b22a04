package unthrum.facts;

/** Where a conclusion holds: a panel, or a part of it such as 'bay 2' or 'rib at 575 mm'; the vehicle has no name. */
public record Place(String panel, String part) implements Comparable<Place> {

    public static final Place VEHICLE = new Place("", "");

    public static Place of(String panel) {
        return new Place(panel, "");
    }

    public boolean isWholePanel() {
        return part.isEmpty();
    }

    public boolean isVehicle() {
        return panel.isEmpty();
    }

    /** Whether what holds at the other place holds here too. */
    public boolean within(Place other) {
        return other.isVehicle() || panel.equals(other.panel) && (other.isWholePanel() || part.equals(other.part));
    }

    @Override
    public int compareTo(Place other) {
        int byPanel = panel.compareTo(other.panel);
        return byPanel != 0 ? byPanel : part.compareTo(other.part);
    }

    @Override
    public String toString() {
        if (isVehicle()) {
            return "the vehicle";
        }
        return isWholePanel() ? panel : panel + ", " + part;
    }
}
