namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A symmetric matrix with entries on its diagonal and in its last row and column only.</summary>
internal sealed class Arrow(int groupCount)
{
    public double[] Diagonal { get; } = new double[groupCount];

    public double[] Border { get; } = new double[groupCount];

    public double Corner { get; set; }

    /// <summary>What is left of the corner when the diagonal is taken out.</summary>
    private double Rest => Corner - Diagonal.Zip(Border, (d, b) => b * b / d).Sum();

    // A rest that is a rounding of the corner means that the two directions cannot be told apart.
    public bool IsPositive => Diagonal.All(d => d > 0) && Rest > 1e-12 * Corner;

    public Arrow Less(Arrow other)
    {
        var less = new Arrow(Diagonal.Length) { Corner = Corner - other.Corner };
        for (var g = 0; g < Diagonal.Length; g++)
        {
            less.Diagonal[g] = Diagonal[g] - other.Diagonal[g];
            less.Border[g] = Border[g] - other.Border[g];
        }
        return less;
    }

    /// <summary>The solution for a right side of the groups and then the corner; the matrix has to be positive.</summary>
    public double[] Solve(double[] right)
    {
        var k = Diagonal.Length;
        var answer = new double[k + 1];
        answer[k] = right[k];
        for (var g = 0; g < k; g++) answer[k] -= Border[g] / Diagonal[g] * right[g];
        answer[k] /= Rest;
        for (var g = 0; g < k; g++) answer[g] = (right[g] - Border[g] * answer[k]) / Diagonal[g];
        return answer;
    }
}
