package wisp.statistics;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * The distribution of the first cell of a two-by-two table, all margins fixed, at a given odds ratio (Fisher 1935 J R
 * Stat Soc 98:39): P(k) is proportional to the central hypergeometric probability of k times the odds ratio to the k.
 */
final class NoncentralHypergeometric {

    private final int lowest;
    private final double[] logCentral;

    private NoncentralHypergeometric(int lowest, double[] logCentral) {
        this.lowest = lowest;
        this.logCentral = logCentral;
    }

    static NoncentralHypergeometric of(TwoByTwoTable table) {
        HypergeometricDistribution central =
                HypergeometricDistribution.of(table.total(), table.cases(), table.exposed());
        int lowest = central.getSupportLowerBound();
        double[] logs = new double[central.getSupportUpperBound() - lowest + 1];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = central.logProbability(lowest + i);
        }
        return new NoncentralHypergeometric(lowest, logs);
    }

    /** The sum of the first cells of several tables: their distributions convolved. */
    static NoncentralHypergeometric sum(List<TwoByTwoTable> strata) {
        int lowest = 0;
        double[] sum = {1};
        for (TwoByTwoTable stratum : strata) {
            NoncentralHypergeometric one = of(stratum);
            double[] p = one.probabilities(1);
            double[] next = new double[sum.length + p.length - 1];
            for (int i = 0; i < sum.length; i++) {
                for (int j = 0; j < p.length; j++) {
                    next[i + j] += sum[i] * p[j];
                }
            }
            sum = next;
            lowest += one.lowest;
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] = Math.log(sum[i]);
        }
        return new NoncentralHypergeometric(lowest, sum);
    }

    int lowest() {
        return lowest;
    }

    int highest() {
        return lowest + logCentral.length - 1;
    }

    /** Probabilities of lowest .. highest. */
    double[] probabilities(double oddsRatio) {
        double logOdds = Math.log(oddsRatio);
        double[] p = new double[logCentral.length];
        double max = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < p.length; i++) {
            p[i] = logCentral[i] + i * logOdds;
            max = Math.max(max, p[i]);
        }
        double sum = 0;
        for (int i = 0; i < p.length; i++) {
            p[i] = Math.exp(p[i] - max);
            sum += p[i];
        }
        for (int i = 0; i < p.length; i++) {
            p[i] /= sum;
        }
        return p;
    }

    double mean(double oddsRatio) {
        double[] p = probabilities(oddsRatio);
        double mean = lowest;
        for (int i = 0; i < p.length; i++) {
            mean += i * p[i];
        }
        return mean;
    }

    /** P(K at most k), the probability of k itself counted with a weight (1, or 0.5 for mid-p). */
    double atMost(int k, double weight, double oddsRatio) {
        double[] p = probabilities(oddsRatio);
        double sum = weight * p[k - lowest];
        for (int i = 0; i < k - lowest; i++) {
            sum += p[i];
        }
        return sum;
    }

    /** P(K at least k), the probability of k itself counted with a weight. */
    double atLeast(int k, double weight, double oddsRatio) {
        double[] p = probabilities(oddsRatio);
        double sum = weight * p[k - lowest];
        for (int i = k - lowest + 1; i < p.length; i++) {
            sum += p[i];
        }
        return sum;
    }

    /** The odds ratio at which a function that rises with it crosses 0. */
    double oddsRatioWhere(DoubleUnaryOperator rising) {
        DoubleUnaryOperator onLog = log -> rising.applyAsDouble(Math.exp(log));
        return Math.exp(Quantile.rootBeyond(onLog, 0, onLog.applyAsDouble(0) < 0 ? 0.5 : -0.5));
    }
}
