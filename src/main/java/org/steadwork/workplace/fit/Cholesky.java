package org.steadwork.workplace.fit;

/** The lower triangle L of a symmetric matrix with L·Lᵀ equal to it; turns independent normal numbers into correlated ones. */
final class Cholesky {

    private static final double LEAST_PIVOT = 1e-10;

    private final double[][] lower;

    private Cholesky(double[][] lower) {
        this.lower = lower;
    }

    /**
     * Factors a correlation matrix; only its lower triangle is read.
     *
     * @throws IllegalArgumentException when it is not positive definite, so that no numbers can go together in that way
     * Source: Golub and Van Loan, Matrix Computations, algorithm for the Cholesky factor (row by row).
     */
    static Cholesky of(double[][] correlations) {
        int size = correlations.length;
        double[][] lower = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column <= row; column++) {
                double rest = correlations[row][column];
                for (int i = 0; i < column; i++) {
                    rest -= lower[row][i] * lower[column][i];
                }
                if (row == column && !(rest > LEAST_PIVOT)) {
                    throw new IllegalArgumentException("These correlations cannot stand together: the matrix is not positive definite");
                }
                lower[row][column] = row == column ? Math.sqrt(rest) : rest / lower[column][column];
            }
        }
        return new Cholesky(lower);
    }

    double at(int row, int column) {
        return lower[row][column];
    }

    /** Writes L·independent into {@code correlated}; both as long as the matrix. */
    void correlate(double[] independent, double[] correlated) {
        for (int row = 0; row < lower.length; row++) {
            double sum = 0;
            for (int i = 0; i <= row; i++) {
                sum += lower[row][i] * independent[i];
            }
            correlated[row] = sum;
        }
    }
}
