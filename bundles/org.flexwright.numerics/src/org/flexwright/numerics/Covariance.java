package org.flexwright.numerics;

import java.util.Optional;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How the parameters of a least-squares fit vary together, to first order about the place that was found.
 *
 * @param values row and column a parameter
 */
public record Covariance(double[][] values) {
	private static final double SINGULAR = 1e-12;

	/**
	 * s2 (J'J)^-1.
	 *
	 * @param jacobian         one row an observation, weighted as in the fit, one column a parameter
	 * @param residualVariance variance of one weighted residual
	 * @return empty when the observations do not determine all parameters
	 */
	public static Optional<Covariance> of(double[][] jacobian, double residualVariance) {
		Require.notNegative(residualVariance, "residual variance");
		if (jacobian.length == 0 || jacobian.length < jacobian[0].length) {
			return Optional.empty();
		}
		int k = jacobian[0].length;
		double[] scale = columnLengths(jacobian);
		RealMatrix x = new Array2DRowRealMatrix(jacobian.length, k);
		for (int i = 0; i < jacobian.length; i++) {
			for (int j = 0; j < k; j++) {
				x.setEntry(i, j, jacobian[i][j] / scale[j]);
			}
		}
		QRDecomposition qr = new QRDecomposition(x, SINGULAR);
		if (!qr.getSolver().isNonSingular()) {
			return Optional.empty();
		}
		RealMatrix inverse = new QRDecomposition(qr.getR().getSubMatrix(0, k - 1, 0, k - 1), 0).getSolver().getInverse();
		RealMatrix product = inverse.multiplyTransposed(inverse);
		double[][] values = new double[k][k];
		for (int a = 0; a < k; a++) {
			for (int b = 0; b < k; b++) {
				values[a][b] = product.getEntry(a, b) * residualVariance / (scale[a] * scale[b]);
			}
		}
		return Optional.of(new Covariance(values));
	}

	/** Columns of very different size are brought to length 1 first, so that the test for dependence sees their direction alone. */
	static double[] columnLengths(double[][] matrix) {
		double[] length = new double[matrix[0].length];
		for (double[] row : matrix) {
			Require.finite(row, "row");
			Require.sameLength(row.length, length.length, "columns in every row");
			for (int j = 0; j < length.length; j++) {
				length[j] = Math.hypot(length[j], row[j]);
			}
		}
		for (int j = 0; j < length.length; j++) {
			length[j] = length[j] == 0 ? 1 : length[j];
		}
		return length;
	}

	/** Standard error of a parameter. */
	public double error(int parameter) {
		return Math.sqrt(values[parameter][parameter]);
	}

	/** Standard error of a figure that changes by so much with each parameter. */
	public double error(double[] slopes) {
		Require.sameLength(slopes.length, values.length, "slopes as parameters");
		double variance = 0;
		for (int a = 0; a < slopes.length; a++) {
			for (int b = 0; b < slopes.length; b++) {
				variance += slopes[a] * slopes[b] * values[a][b];
			}
		}
		return Math.sqrt(Math.max(0, variance));
	}
}
