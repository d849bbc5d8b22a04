package unthrum.report;

import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.material.Layer;

/** A limit or a pairing as a clause about the layer it binds. */
final class LimitWords {

    private LimitWords() {
    }

    /** 'the whole stack may be 8 mm at most', 'it must bear 105 °C'. */
    static String of(Limit limit) {
        String value = limit.bound().dimension().show(limit.value());
        return switch (limit.bound()) {
            case STACK_THICKNESS -> "the whole stack may be " + value + " at most";
            case LAYER_THICKNESS -> "it may be " + value + " thick at most";
            case SERVICE_TEMPERATURE -> "it must bear " + value;
            case SERVICE_COLD -> "it must bear cold down to " + value;
            case MASS -> limit.place().isVehicle() ? "the whole job may add " + value + " at most"
                    : "all layers together may add " + value + " at most";
            case HEAVY_ENOUGH -> "it must weigh " + value + " at least";
            case LIGHT_ENOUGH -> "it may weigh " + value + " at most";
            case COVERAGE -> "it may cover " + value + " at most";
            case BURN_RATE -> "it must be stated to burn no faster than " + value;
            case CLOSED_CELL -> "it must be closed-cell or solid";
            case LIFTS_OUT -> "it must come off again";
            case NOT_BONDED -> "it must not be stuck on";
            case HELD -> "it must be stuck or fastened";
            case BEARS_WEAR -> "it must bear feet, tools and dragged loads";
            case PLAIN_FACE -> "it needs no wear-proof face";
            case BRIGHT_FACE -> "it must show a bright face";
        };
    }

    static String of(Pairing pairing) {
        return noun(pairing.layer()) + " " + pairing.tie().phrase() + " " + noun(pairing.other());
    }

    /** What a limit binds: 'any layer', 'a barrier'. */
    static String noun(Layer layer) {
        return layer == Layer.ANY ? "any layer" : English.withArticle(layer.word());
    }
}
