package unthrum.drill;

import java.util.SortedSet;
import unthrum.reasoning.change.Outcome;

/**
 * What an apprentice says of a panel.
 *
 * @param outcome which layers go where, or that the panel waits or is to be measured first
 * @param why     the numbers of the reasons chosen, counted from 1
 */
public record Answer(Outcome outcome, SortedSet<Integer> why) {
}
