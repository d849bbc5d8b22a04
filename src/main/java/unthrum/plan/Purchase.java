package unthrum.plan;

import unthrum.material.Material;

/**
 * One material of the plan: how much it takes, what the shelf gives, and what must be bought. Areas are net, so the
 * packs are the least that could do; cutting layouts may need more.
 *
 * @param area   needed, m²
 * @param pieces needed of goods sold by the piece, else 0
 * @param shelf  area on the shelf that is used, m², or pieces
 * @param packs  to buy
 */
public record Purchase(Material material, double area, int pieces, double shelf, int packs) {

    public double price() {
        return packs * material.price().amount().doubleValue();
    }
}
