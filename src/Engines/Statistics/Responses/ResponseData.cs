using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What a fit is made from: pupils and levels by their place in a list, and the trials between them.</summary>
public sealed class ResponseData
{
    private readonly Lazy<TrialCells> _cells;

    /// <summary>Pupils, levels and trials that belong together.</summary>
    /// <param name="pupils">Any number; pupils without a trial keep what was assumed about them.</param>
    /// <param name="levels">Any number; levels without a trial keep what they share with others.</param>
    /// <param name="trials">Any number, any order; <see cref="CountedTrials"/> where there are millions.</param>
    /// <exception cref="ArgumentException">A trial or prediction that names no pupil or level; counts that cannot be; a time without a hold to measure
    /// it against or for several trials at once; covariates of different numbers or not finite.</exception>
    public ResponseData(IReadOnlyList<ResponsePupil> pupils, IReadOnlyList<ResponseLevel> levels, IReadOnlyList<ResponseTrial> trials)
    {
        (Pupils, Levels, Trials) = (pupils, levels, trials);
        CheckPupils();
        CheckLevels();
        if (trials is CountedTrials counted) CheckCounted(counted);
        else foreach (var trial in trials) Check(trial);
        _cells = new(() => Counted(trials, pupils.Count));
    }

    /// <summary>The pupils, by index.</summary>
    public IReadOnlyList<ResponsePupil> Pupils { get; }

    /// <summary>The levels, by index.</summary>
    public IReadOnlyList<ResponseLevel> Levels { get; }

    /// <summary>The trials as given.</summary>
    public IReadOnlyList<ResponseTrial> Trials { get; }

    /// <summary>The trials counted together, once for all that asks.</summary>
    internal TrialCells Cells => _cells.Value;

    /// <summary>What is wrong with a trial by itself; none for most.</summary>
    internal static string? Fault(in ResponseTrial trial)
    {
        if (trial.Pupil < 0) return "there is no such pupil.";
        if (trial.Level is < 0 or > ushort.MaxValue) return "there is no such level.";
        if (trial.Lesson is < 0 or > 10_000) return "lessons are counted from 0 to 10 000.";
        if (trial.Trials < 1 || trial.Successes < 0 || trial.Successes > trial.Trials) return "at least one trial, and no more successes than trials.";
        if (trial.HeldS is not { } held) return null;
        if (trial.Trials != 1) return "a time belongs to one trial.";
        return held >= 0 && double.IsFinite(held) ? null : "a hold lasts 0 seconds or more.";
    }

    private static TrialCells Counted(IReadOnlyList<ResponseTrial> trials, int pupilCount)
    {
        if (trials is CountedTrials counted) return counted.Cells;
        var counter = new CellCounter();
        foreach (var trial in trials) counter.Add(trial);
        return counter.Take(pupilCount);
    }

    /// <summary>Checks one trial.</summary>
    /// <exception cref="ArgumentException">A trial that names no pupil or level, or cannot be.</exception>
    private void Check(in ResponseTrial trial)
    {
        var fault = trial.Pupil >= Pupils.Count ? "there is no such pupil." : trial.Level >= Levels.Count ? "there is no such level."
            : Fault(trial) ?? (trial.HeldS is null || Levels[trial.Level].Dose is { Measure: DoseMeasure.Hold } ? null : "only a hold is timed.");
        if (fault is not null) throw new ArgumentException($"{trial}: {fault}", nameof(trial));
    }

    /// <summary>Checks trials that were counted before pupils and levels were known.</summary>
    /// <exception cref="ArgumentException">One that names no pupil or level, or has a time without a hold.</exception>
    private void CheckCounted(CountedTrials counted)
    {
        if (counted.Cells.PupilCount > Pupils.Count) throw new ArgumentException($"Trials of {counted.Cells.PupilCount} pupils, of whom there are {Pupils.Count}.", nameof(counted));
        if (counted.LevelCount > Levels.Count) throw new ArgumentException($"Trials of {counted.LevelCount} levels, of which there are {Levels.Count}.", nameof(counted));
        foreach (var trial in counted.Cells.AllTimed) Check(trial);
    }

    /// <summary>Checks what pupils bring.</summary>
    /// <exception cref="ArgumentException">A prediction about no level or outside 0 to 1; covariates of different numbers or not finite.</exception>
    private void CheckPupils()
    {
        foreach (var pupil in Pupils)
        {
            if (pupil.Prediction is { } p && ((uint)p.Level >= Levels.Count || !(p.ChanceFraction >= 0 && p.ChanceFraction <= 1)))
                throw new ArgumentException($"{p}: a prediction names a level and a chance from 0 to 1.", nameof(pupil));
            if (pupil.Covariates.Count != Pupils[0].Covariates.Count || !pupil.Covariates.All(double.IsFinite))
                throw new ArgumentException("Pupils have the same number of covariates, all finite.", nameof(pupil));
        }
    }

    /// <summary>Checks what levels bring.</summary>
    /// <exception cref="ArgumentException">Covariates of different numbers or not finite.</exception>
    private void CheckLevels()
    {
        foreach (var level in Levels)
        {
            if (level.Covariates.Count != Levels[0].Covariates.Count || !level.Covariates.All(double.IsFinite) || !double.IsFinite(level.OrderLogits ?? 0))
                throw new ArgumentException("Levels have the same number of covariates, all finite.", nameof(level));
        }
    }
}
