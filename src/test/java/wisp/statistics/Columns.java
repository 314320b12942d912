package wisp.statistics;

import java.util.Arrays;

/** Columns of a reference file as designs and outcomes. */
final class Columns {
    private Columns() {}

    static double[][] design(ReferenceFile file, String... names) {
        double[][] columns = new double[names.length][];
        for (int j = 0; j < names.length; j++) {
            columns[j] = file.numbers("input/data/" + names[j]);
        }
        return Design.withIntercept(columns);
    }

    static boolean[] outcome(ReferenceFile file, String name) {
        double[] values = file.numbers("input/data/" + name);
        boolean[] outcome = new boolean[values.length];
        for (int i = 0; i < outcome.length; i++) {
            outcome[i] = values[i] == 1;
        }
        return outcome;
    }

    /** 1 where the label is {@code level}, else 0. */
    static double[] indicator(String[] labels, String level) {
        return Arrays.stream(labels).mapToDouble(x -> x.equals(level) ? 1 : 0).toArray();
    }

    /** Holds coefficients, standard errors, z, p and Wald limits to {@code path} of the file. */
    static void holds(ReferenceFile file, String path, Coefficients fit) {
        for (int j = 0; j < fit.values().length; j++) {
            Interval wald = fit.wald(j, 0.95);
            ReferenceFile.assertClose(file.number(path + "/coef/" + j), fit.values()[j], 1e-7, "coefficient " + j);
            ReferenceFile.assertClose(file.number(path + "/se/" + j), fit.standardError(j), 1e-6, "se " + j);
            ReferenceFile.assertClose(file.number(path + "/z/" + j), fit.z(j), 1e-6, "z " + j);
            ReferenceFile.assertClose(file.number(path + "/p/" + j), fit.pValue(j), 1e-5, "p " + j);
            ReferenceFile.assertClose(file.number(path + "/wald_lower/" + j), wald.low(), 1e-5, "low " + j);
            ReferenceFile.assertClose(file.number(path + "/wald_upper/" + j), wald.high(), 1e-5, "high " + j);
        }
    }
}
