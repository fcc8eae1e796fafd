namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>What pupils add up to: all that a round of the search needs, whatever machine or thread the pupils were on.</summary>
internal sealed class PupilSums(int rows)
{
    public double LogLikelihood { get; set; }

    /// <summary>Derivative by the logarithm of the spread of abilities.</summary>
    public double SpreadSlope { get; set; }

    /// <summary>Derivative by row.</summary>
    public double[] Gradient { get; } = new double[rows];

    /// <summary>Minus the second derivative, lower triangle, row by row.</summary>
    public double[] Information { get; } = new double[rows * rows];

    public void Clear()
    {
        LogLikelihood = SpreadSlope = 0;
        Array.Clear(Gradient);
        Array.Clear(Information);
    }

    /// <summary>Lets what was summed stand for so many times as many pupils.</summary>
    public void Scale(double by)
    {
        LogLikelihood *= by;
        SpreadSlope *= by;
        for (var i = 0; i < Gradient.Length; i++) Gradient[i] *= by;
        for (var i = 0; i < Information.Length; i++) Information[i] *= by;
    }

    public void Add(PupilSums other)
    {
        LogLikelihood += other.LogLikelihood;
        SpreadSlope += other.SpreadSlope;
        for (var i = 0; i < Gradient.Length; i++) Gradient[i] += other.Gradient[i];
        for (var i = 0; i < Information.Length; i++) Information[i] += other.Information[i];
    }
}
