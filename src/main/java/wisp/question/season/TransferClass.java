package wisp.question.season;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wisp.event.BloodTested;
import wisp.indicator.Estimate;
import wisp.indicator.Verdict;
import wisp.statistics.Interval;
import wisp.statistics.WilsonInterval;

/**
 * The four classes of passive transfer of the 2020 consensus with the share of a herd's calves that each should hold:
 * Lombard and others 2020, J Dairy Sci 103:7611. A class begins at its edge and ends below the next one's; IgG decides
 * where several were measured, then serum protein, then Brix.
 */
public enum TransferClass {
    EXCELLENT(25.0, 6.2, 9.4, "more than 40 %"),
    GOOD(18.0, 5.8, 8.9, "about 30 %"),
    FAIR(10.0, 5.1, 8.1, "about 20 %"),
    POOR(0, 0, 0, "less than 10 %");

    /** Where the classes come from. */
    public static final String SOURCE = "Lombard et al. 2020, J Dairy Sci 103:7611";

    private final double igg;
    private final double protein;
    private final double brix;
    private final String target;

    TransferClass(double igg, double protein, double brix, String target) {
        this.igg = igg;
        this.protein = protein;
        this.brix = brix;
        this.target = target;
    }

    /**
     * One class of a season.
     *
     * @param calves those in it
     * @param tested calves with a test that counts
     * @param share with Wilson's interval, null where none was tested
     */
    public record Share(TransferClass of, CalfList calves, int tested, Interval share) {}

    /** The class in words. */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The share that the consensus asks for, in words. */
    public String target() {
        return target;
    }

    /** From where on a calf is in the class, by each measurement. */
    public String edges() {
        return this == POOR
                ? "below fair"
                : String.format(
                        Locale.ROOT, "from %.1f g/l IgG, %.1f g/dl protein or %.1f %% Brix", igg, protein, brix);
    }

    static TransferClass of(BloodTested test) {
        for (TransferClass one : values()) {
            boolean reached = test.iggGL() != null
                    ? test.iggGL() >= one.igg
                    : test.serumProteinGDl() != null
                            ? test.serumProteinGDl() >= one.protein
                            : test.serumBrixPercent() >= one.brix;
            if (reached) {
                return one;
            }
        }
        return POOR;
    }

    /** The calves that the figure of passive transfer counts, by class; empty where its records are of another kind. */
    static List<Share> of(Estimate transfer) {
        Map<TransferClass, List<Integer>> rows = new EnumMap<>(TransferClass.class);
        int tested = 0;
        for (Verdict verdict : transfer.verdicts()) {
            if (verdict.atRisk()
                    && verdict.because() != null
                    && verdict.because().data() instanceof BloodTested test) {
                rows.computeIfAbsent(of(test), c -> new ArrayList<>()).add(verdict.row());
                tested++;
            }
        }
        List<Share> shares = new ArrayList<>();
        for (TransferClass one : values()) {
            List<Integer> of = rows.getOrDefault(one, List.of());
            CalfList list = new CalfList("transfer." + one.words(), "Passive transfer " + one.words(), of);
            Interval share = tested == 0 ? null : WilsonInterval.of(of.size(), tested, 0.95);
            shares.add(new Share(one, list, tested, share));
        }
        return shares;
    }
}
