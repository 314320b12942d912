package wisp.statistics;

/** Log likelihood, score and observed information of the proportional odds model at one set of parameters. */
record OrderedLikelihood(double[] parameters, double logLikelihood, double[] score, double[][] information) {

    /** The likelihood there; null where some observed category has no probability. */
    static OrderedLikelihood at(
            int[] categories, double[] weights, double[][] design, double[] parameters, int slopes) {
        int p = parameters.length;
        OrderedLikelihood sum = new OrderedLikelihood(parameters, 0, new double[p], new double[p][p]);
        double logLikelihood = 0;
        for (int i = 0; i < categories.length; i++) {
            if (weights[i] > 0) {
                double probability = sum.add(categories[i], weights[i], design[i], slopes);
                if (!(probability > 0)) {
                    return null;
                }
                logLikelihood += weights[i] * Math.log(probability);
            }
        }
        return new OrderedLikelihood(parameters, logLikelihood, sum.score, sum.information);
    }

    /** Adds one row: its probability is F(a) - F(b) with a and b the bounds of its category, less x b. */
    private double add(int category, double weight, double[] row, int slopes) {
        double eta = 0;
        for (int j = 0; j < slopes; j++) {
            eta += row[j] * parameters[j];
        }
        boolean top = slopes + category == parameters.length;
        double upper = top ? 1 : RegressionFamily.BINOMIAL.mean(parameters[slopes + category] - eta, 1);
        double lower = category == 0 ? 0 : RegressionFamily.BINOMIAL.mean(parameters[slopes + category - 1] - eta, 1);
        double probability = upper - lower;
        double densityUpper = upper * (1 - upper);
        double densityLower = lower * (1 - lower);
        double byUpper = densityUpper / probability;
        double byLower = -densityLower / probability;
        double upperTwice = densityUpper * (1 - 2 * upper) / probability - byUpper * byUpper;
        double lowerTwice = -densityLower * (1 - 2 * lower) / probability - byLower * byLower;
        double both = -byUpper * byLower;
        double[] a = gradient(row, slopes, top ? -1 : slopes + category);
        double[] b = gradient(row, slopes, category == 0 ? -1 : slopes + category - 1);
        for (int j = 0; j < score.length; j++) {
            score[j] += weight * (byUpper * a[j] + byLower * b[j]);
            for (int k = 0; k < score.length; k++) {
                information[j][k] -= weight
                        * (upperTwice * a[j] * a[k] + lowerTwice * b[j] * b[k] + both * (a[j] * b[k] + b[j] * a[k]));
            }
        }
        return probability;
    }

    private double[] gradient(double[] row, int slopes, int threshold) {
        double[] gradient = new double[parameters.length];
        for (int j = 0; j < slopes; j++) {
            gradient[j] = -row[j];
        }
        if (threshold >= 0) {
            gradient[threshold] = 1;
        }
        return gradient;
    }
}
