package wisp.simulation;

import java.util.List;

/**
 * How calves come into the world.
 *
 * @param parity shares of dams at their 1st, 2nd … calving
 * @param twinsFirst probability of twins at a first calving
 * @param twinsLater the same at later ones
 * @param easeFirst shares of ease 1–5 at a first calving of a single calf
 * @param easeLater the same at later ones
 * @param easeTwins the same for twins
 * @param breeds the breeds
 * @param male probability of a bull calf
 * @param keepEntire probability that a bull calf is to stay entire
 * @param outsideByDay probability of a birth outside the calving pens, 06–22 h
 * @param outsideByNight the same, 22–06 h
 * @param bornDead probability of a dead birth at ease 1, later calving, single
 * @param bornDeadByEase what ease 1–5 multiplies it by
 * @param bornDeadFirst what a first calving multiplies it by
 * @param bornDeadTwin what twins multiply it by
 */
public record Calvings(
        List<Double> parity,
        double twinsFirst,
        double twinsLater,
        List<Double> easeFirst,
        List<Double> easeLater,
        List<Double> easeTwins,
        List<Breed> breeds,
        double male,
        double keepEntire,
        double outsideByDay,
        double outsideByNight,
        double bornDead,
        List<Double> bornDeadByEase,
        double bornDeadFirst,
        double bornDeadTwin) {

    /**
     * A breed.
     *
     * @param share of calvings
     * @param weightKg mean birth weight of a single heifer calf from a later calving
     * @param dairy whether bulls are mostly sold young
     */
    public record Breed(String name, double share, double weightKg, boolean dairy) {}

    /** Shares of ease 1–5. */
    List<Double> ease(int damParity, boolean twin) {
        return twin ? easeTwins : damParity == 1 ? easeFirst : easeLater;
    }

    double twins(int damParity) {
        return damParity == 1 ? twinsFirst : twinsLater;
    }

    double bornDead(int ease, int damParity, boolean twin) {
        double first = damParity == 1 ? bornDeadFirst : 1;
        return Math.min(0.95, bornDead * bornDeadByEase.get(ease - 1) * first * (twin ? bornDeadTwin : 1));
    }

    /** The probability that a calf is born dead, over the mix of parity, twins and ease. */
    public double bornDeadOverall() {
        double dead = 0;
        double calves = 0;
        for (int p = 1; p <= parity.size(); p++) {
            for (int litter = 1; litter <= 2; litter++) {
                boolean twin = litter == 2;
                double weight = parity.get(p - 1) * (twin ? twins(p) : 1 - twins(p)) * litter;
                calves += weight;
                for (int ease = 1; ease <= 5; ease++) {
                    dead += weight * ease(p, twin).get(ease - 1) * bornDead(ease, p, twin);
                }
            }
        }
        return dead / calves;
    }
}
