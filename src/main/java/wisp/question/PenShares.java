package wisp.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.indicator.Estimate;
import wisp.statistics.FunnelLimits;

/**
 * The pens of one answer, judged together.
 *
 * @param pens in the order given
 * @param spread how far they lie apart
 * @param homogeneity whether they differ at all
 */
record PenShares(List<PenShare> pens, PenSpread spread, PenHomogeneity homogeneity) {

    /**
     * Judges pens, each of which has a scored calf.
     *
     * @param before each pen's share of last season, by name
     */
    static PenShares of(
            List<Estimate> scored, List<ScoredCalf> calves, BeddingAge beddings, Map<String, DirtyShare> before) {
        List<DirtyShare> shares = scored.stream()
                .map(stratum -> PensQuestion.share(stratum.name(), stratum))
                .toList();
        int[] dirty = shares.stream().mapToInt(DirtyShare::dirty).toArray();
        int[] sizes = shares.stream().mapToInt(DirtyShare::n).toArray();
        DirtyShare all = DirtyShare.of("all", "all pens", "of all pens", calves);
        PenSpread spread = PenSpread.of(dirty, sizes);
        List<PenContrast> others = PenContrast.all(
                shares, shares.stream().map(share -> rest(share, shares, all)).toList());
        List<PenContrast> earlier = PenContrast.all(
                shares, shares.stream().map(share -> before.get(share.name())).collect(Collectors.toList()));
        Map<String, List<ScoredCalf>> byPen = calves.stream().collect(Collectors.groupingBy(ScoredCalf::pen));
        List<PenShare> pens = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            DirtyShare share = shares.get(i);
            List<ScoredCalf> own = byPen.get(share.name());
            boolean limits = all.dirty() > 0 && all.dirty() < all.n();
            pens.add(new PenShare(
                    scored.get(i),
                    share,
                    beddings.kept(share.name()),
                    meanScore(own),
                    limits ? FunnelLimits.z(share.dirty(), share.n(), all.share()) : Double.NaN,
                    limits ? limits(share.n(), all, 0.95) : null,
                    limits ? limits(share.n(), all, 0.998) : null,
                    spread.fitted() ? spread.shrunken().get(i) : null,
                    spread.dirtiest().isEmpty() ? Double.NaN : spread.dirtiest().get(i),
                    spread.fitted() ? spread.aboveMedian().get(i) : Double.NaN,
                    Circumstances.medianDays(own),
                    Circumstances.medianDays(calves.stream()
                            .filter(calf -> !calf.pen().equals(share.name()))
                            .toList()),
                    others.get(i),
                    earlier.get(i)));
        }
        return new PenShares(pens, spread, PenHomogeneity.of(dirty, sizes));
    }

    static FunnelLimits limits(int n, DirtyShare all, double probability) {
        return FunnelLimits.of(n, all.share(), probability, FunnelLimits.Method.EXACT_BINOMIAL_INTERPOLATED);
    }

    /** All other pens together; with one other pen, that pen. */
    private static DirtyShare rest(DirtyShare share, List<DirtyShare> shares, DirtyShare all) {
        if (shares.size() == 2) {
            return shares.get(share == shares.get(0) ? 1 : 0);
        }
        return DirtyShare.of("all other pens", all.dirty() - share.dirty(), all.n() - share.n());
    }

    private static double meanScore(List<ScoredCalf> calves) {
        return calves.stream().anyMatch(calf -> calf.score() == null)
                ? Double.NaN
                : calves.stream().mapToInt(ScoredCalf::score).average().orElse(Double.NaN);
    }
}
