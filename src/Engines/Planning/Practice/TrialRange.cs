namespace Slantwise.Engines.Planning.Practice;

/// <summary>Trials over many simulated lessons.</summary>
/// <param name="Low">One lesson in twenty has fewer, or as many.</param>
/// <param name="Median">Half of the lessons have this many or fewer.</param>
/// <param name="High">One lesson in twenty has more, or as many.</param>
public readonly record struct TrialRange(int Low, int Median, int High);
