namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>Trials of one pupil at one level in one lesson that nobody timed, counted together: eight bytes.</summary>
internal readonly record struct TrialCell(ushort Level, ushort Lesson, ushort Trials, ushort Successes)
{
    /// <summary>The most trials of one cell; more are several cells.</summary>
    public const int MostTrials = ushort.MaxValue;

    /// <summary>Level, then lesson: the order of a pupil's cells, and where two are alike, they are one.</summary>
    public int Place => (Level << 16) | Lesson;
}
