package wisp.statistics;

/**
 * Weeks in remission of 42 children with leukaemia (Freireich and others 1963, Blood 21:699), as printed in most
 * textbooks of survival: 21 on 6-MP, then 21 on placebo, who all relapsed.
 */
final class Freireich {
    static final double[] SIX_MP = {6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35};
    static final double[] PLACEBO = {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23};
    private static final String SIX_MP_RELAPSES = "111010100110001100000";

    private Freireich() {}

    static boolean[] sixMpRelapses() {
        return relapses(SIX_MP_RELAPSES);
    }

    static double[] times() {
        double[] times = new double[42];
        System.arraycopy(SIX_MP, 0, times, 0, 21);
        System.arraycopy(PLACEBO, 0, times, 21, 21);
        return times;
    }

    static boolean[] events() {
        return relapses(SIX_MP_RELAPSES + "1".repeat(21));
    }

    /** 1 on 6-MP, 2 on placebo. */
    static int[] arms() {
        int[] arms = new int[42];
        for (int i = 0; i < 42; i++) {
            arms[i] = i < 21 ? 1 : 2;
        }
        return arms;
    }

    private static boolean[] relapses(String flags) {
        boolean[] relapses = new boolean[flags.length()];
        for (int i = 0; i < relapses.length; i++) {
            relapses[i] = flags.charAt(i) == '1';
        }
        return relapses;
    }
}
