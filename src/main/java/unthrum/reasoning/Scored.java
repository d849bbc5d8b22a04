package unthrum.reasoning;

import unthrum.effect.Layup;

/**
 * A layup with what it is judged by; all in shares of what the bare vehicle gives off, 0.01 is one per cent.
 *
 * @param gain  what it takes, weighed by the client's aims
 * @param trade what the trade's weights count where no formula tells a gain
 * @param worth gain and trade, less what its mass and money would have to bring, and less a shade for each preference
 *              of the rules that it does not keep
 */
public record Scored(Layup layup, double gain, double trade, double worth) {

    static final Scored NOTHING = new Scored(Layup.NOTHING, 0, 0, 0);
}
