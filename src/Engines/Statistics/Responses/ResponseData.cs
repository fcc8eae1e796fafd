namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What a fit is made from: pupils and levels by their place in a list, and the trials between them.</summary>
public sealed class ResponseData
{
    /// <summary>Pupils, levels and trials that belong together.</summary>
    /// <param name="pupils">Any number; pupils without a trial keep what was assumed about them.</param>
    /// <param name="levels">Any number; levels without a trial keep what they share with others.</param>
    /// <param name="trials">Any number, any order.</param>
    /// <exception cref="ArgumentException">A trial or prediction that names no pupil or level; counts that cannot be; a time without a hold to measure
    /// it against or for several trials at once; covariates of different numbers or not finite.</exception>
    public ResponseData(IReadOnlyList<ResponsePupil> pupils, IReadOnlyList<ResponseLevel> levels, IReadOnlyList<ResponseTrial> trials)
    {
        (Pupils, Levels, Trials) = (pupils, levels, trials);
        CheckPupils();
        CheckLevels();
        foreach (var trial in trials)
            if (Fault(trial) is { } fault) throw new ArgumentException($"{trial}: {fault}", nameof(trials));
    }

    /// <summary>The pupils, by index.</summary>
    public IReadOnlyList<ResponsePupil> Pupils { get; }

    /// <summary>The levels, by index.</summary>
    public IReadOnlyList<ResponseLevel> Levels { get; }

    /// <summary>The trials as given.</summary>
    public IReadOnlyList<ResponseTrial> Trials { get; }

    private string? Fault(ResponseTrial trial)
    {
        if ((uint)trial.Pupil >= Pupils.Count) return "there is no such pupil.";
        if ((uint)trial.Level >= Levels.Count) return "there is no such level.";
        if (trial.Lesson is < 0 or > 10_000) return "lessons are counted from 0 to 10 000.";
        if (trial.Trials < 1 || trial.Successes < 0 || trial.Successes > trial.Trials) return "at least one trial, and no more successes than trials.";
        if (trial.HeldS is not { } held) return null;
        if (trial.Trials != 1) return "a time belongs to one trial.";
        if (!(held >= 0 && double.IsFinite(held))) return "a hold lasts 0 seconds or more.";
        return Levels[trial.Level].Dose is { Measure: DoseMeasure.Hold } ? null : "only a hold is timed.";
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
