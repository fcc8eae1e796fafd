using System.Collections;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>
/// Trials of very many pupils in little memory: those of one pupil at one level in one lesson are counted together as they come, eight bytes for all of them. For
/// the model it is the same as a list of single trials; as a list it has one entry for each such count, and one for each trial with a time.
/// </summary>
public sealed class CountedTrials : IReadOnlyList<ResponseTrial>
{
    private CountedTrials(TrialCells cells, int levelCount) => (Cells, LevelCount) = (cells, levelCount);

    /// <inheritdoc/>
    public int Count => Cells.CellCount + Cells.AllTimed.Length;

    internal TrialCells Cells { get; }

    internal int LevelCount { get; }

    /// <inheritdoc/>
    public ResponseTrial this[int index] => Cells.At(index);

    /// <summary>Counts trials.</summary>
    /// <param name="trials">Any number, any order, one pass only: they need not lie in memory.</param>
    /// <exception cref="ArgumentException">Pupil or level below 0, or a level beyond 65 535; a lesson outside 0 to 10 000; counts that cannot be; a time for several trials at once.</exception>
    public static CountedTrials Of(IEnumerable<ResponseTrial> trials)
    {
        var counter = new CellCounter();
        var (pupils, levels) = (0, 0);
        foreach (var trial in trials)
        {
            if (ResponseData.Fault(trial) is { } fault) throw new ArgumentException($"{trial}: {fault}", nameof(trials));
            (pupils, levels) = (Math.Max(pupils, trial.Pupil + 1), Math.Max(levels, trial.Level + 1));
            counter.Add(trial);
        }
        return new(counter.Take(pupils), levels);
    }

    /// <inheritdoc/>
    public IEnumerator<ResponseTrial> GetEnumerator()
    {
        for (var i = 0; i < Cells.PupilCount; i++)
        {
            for (var k = 0; k < Cells.Of(i).Length; k++)
            {
                var cell = Cells.Of(i)[k];
                yield return new(i, cell.Level, cell.Lesson, cell.Successes, cell.Trials);
            }
        }
        for (var k = 0; k < Cells.AllTimed.Length; k++) yield return Cells.AllTimed[k];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
