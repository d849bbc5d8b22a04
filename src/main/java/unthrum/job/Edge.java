package unthrum.job;

/** One step comes before another by a habit of the trade; both by their place in the list of steps. */
public record Edge(int before, int then, OrderRule rule) {
}
