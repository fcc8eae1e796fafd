namespace Slantwise.Engines.Planning.Practice;

/// <summary>How much people vary, as standard deviations of logarithms: .3 means that two turns in three take between three quarters and four thirds of the middle one.</summary>
/// <param name="TurnSd">From turn to turn of one pupil, 0 to 1.5.</param>
/// <param name="PupilSd">From pupil to pupil, 0 to 1.5: who is slow is so in every turn of the lesson.</param>
public readonly record struct TimeSpread(double TurnSd, double PupilSd)
{
    /// <summary>A working assumption without a source: .3 from turn to turn, .2 from pupil to pupil. Stopwatch times of one's own class are better.</summary>
    public static TimeSpread Usual { get; } = new(0.3, 0.2);
}
