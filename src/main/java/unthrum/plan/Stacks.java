package unthrum.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import unthrum.facts.Pairing;
import unthrum.material.Layer;
import unthrum.plan.SharingProblem.Room;

/**
 * The widest stacks that a panel has room for, each told by how thick its layers may be. Whatever fits the panel fits
 * one of them, so the search picks among a few instead of adding up thicknesses, which would allow it the many halves
 * of a barrier.
 */
final class Stacks {

    private Stacks() {
    }

    /** @param offered the thicknesses in which each layer is to be had */
    static List<Map<Layer, Long>> widest(Map<Layer, SortedSet<Long>> offered, Room room) {
        List<Map<Layer, Long>> stacks = new ArrayList<>();
        stacks.add(Map.of());
        offered.forEach((layer, thicknesses) -> {
            for (Map<Layer, Long> stack : List.copyOf(stacks)) {
                thicknesses.forEach(thickness -> stacks.add(with(stack, layer, thickness)));
            }
            stacks.removeIf(stack -> !fits(stack, room));
        });
        return stacks.stream().filter(s -> stacks.stream().noneMatch(o -> o != s && covers(o, s))).toList();
    }

    private static Map<Layer, Long> with(Map<Layer, Long> stack, Layer layer, long thickness) {
        Map<Layer, Long> more = new EnumMap<>(Layer.class);
        more.putAll(stack);
        more.put(layer, thickness);
        return more;
    }

    /** A layer's companion can still be left out of a stack, so only what never goes together narrows it. */
    private static boolean fits(Map<Layer, Long> stack, Room room) {
        return stack.values().stream().mapToLong(t -> t).sum() <= room.stack() && room.pairings().stream()
                .filter(p -> p.tie() == Pairing.Tie.NEVER_WITH).allMatch(p -> p.admits(stack.keySet()));
    }

    /** Whether everything that fits under the narrow stack fits under the wide one. */
    static boolean covers(Map<Layer, Long> wide, Map<Layer, Long> narrow) {
        return narrow.entrySet().stream()
                .allMatch(e -> wide.getOrDefault(e.getKey(), Long.MIN_VALUE) >= e.getValue());
    }
}
