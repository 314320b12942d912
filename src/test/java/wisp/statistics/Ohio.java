package wisp.statistics;

/**
 * Wheeze of 537 children of Steubenville, Ohio, at 7 to 10 years by their mothers' smoking (the Six Cities study;
 * Zeger, Liang and Albert 1988 Biometrics 44:1049): the counts of the sixteen patterns of wheeze, 0000 to 1111 with the
 * youngest age first, from memory of the published table. They add up to its 350 and 187 children.
 */
record Ohio(boolean[] wheeze, int[] child, double[][] design) {
    private static final int[][] PATTERNS = {
        {237, 10, 15, 4, 16, 2, 7, 3, 24, 3, 3, 2, 6, 2, 5, 11}, {118, 6, 8, 2, 11, 1, 6, 4, 7, 3, 3, 1, 4, 2, 4, 7}
    };

    /** Rows of 1, age less 9 and smoking, with their product where asked for. */
    static Ohio read(boolean product) {
        int rows = 4 * 537;
        Ohio ohio = new Ohio(new boolean[rows], new int[rows], new double[rows][]);
        int child = 0;
        for (int smoking = 0; smoking < 2; smoking++) {
            for (int pattern = 0; pattern < 16; pattern++) {
                for (int i = 0; i < PATTERNS[smoking][pattern]; i++, child++) {
                    ohio.add(child, pattern, smoking, product);
                }
            }
        }
        return ohio;
    }

    private void add(int who, int pattern, int smoking, boolean product) {
        for (int year = 0; year < 4; year++) {
            int row = 4 * who + year;
            double age = year - 2;
            wheeze[row] = (pattern >> (3 - year) & 1) == 1;
            child[row] = who;
            design[row] = product ? new double[] {1, age, smoking, age * smoking} : new double[] {1, age, smoking};
        }
    }
}
