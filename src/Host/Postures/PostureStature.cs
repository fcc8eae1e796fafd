using Slantwise.Engines.Mechanics;

namespace Slantwise.Host.Postures;

/// <summary>Whose centimetres are said: the median child of an age, never a pupil.</summary>
/// <param name="AgeYearCount">Whole years; none where no age was given.</param>
/// <param name="Sex">Whose table; none for the mean of both.</param>
internal sealed record PostureStature(int? AgeYearCount, Sex? Sex)
{
    /// <summary>The median stature; none without an age.</summary>
    public double? Cm => AgeYearCount is { } age ? StatureMedian.OfCm(age, Sex) : null;
}
