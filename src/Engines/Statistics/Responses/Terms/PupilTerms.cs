namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>Makes the terms of one pupil after the other, in working space of its own; not for two threads at once.</summary>
internal sealed class PupilTerms(ResponseData data, ResponseOptions options, bool hasLessons, bool[] isUsed)
{
    private readonly List<Raw> _raw = [];

    public List<Term> Terms { get; } = [];

    /// <summary>τ by term.</summary>
    public List<double> Taus { get; } = [];

    public List<int> Own { get; } = [];

    public List<int> States { get; } = [];

    public List<HoldShape.Piece> Pieces { get; } = [];

    /// <summary>Whether any term of the pupil has a τ.</summary>
    public bool HasTimes { get; private set; }

    public int LastLesson { get; private set; }

    /// <summary>Times that contradict their tick.</summary>
    public int LeftAside { get; private set; }

    /// <summary>Makes a pupil's terms, in place of the last one's.</summary>
    public void Make(int pupil)
    {
        _raw.Clear();
        Terms.Clear();
        Taus.Clear();
        Own.Clear();
        States.Clear();
        Pieces.Clear();
        (HasTimes, LeftAside, LastLesson) = (false, 0, 0);
        foreach (var cell in data.Cells.Of(pupil))
            if (isUsed[cell.Level]) _raw.Add(new(cell.Level, hasLessons ? cell.Lesson : (ushort)0, 0, cell.Trials, cell.Successes));
        var timed = data.Cells.Timed(pupil);
        foreach (var trial in timed) if (isUsed[trial.Level]) AddTimed(trial, hasLessons ? trial.Lesson : 0);
        // Cells are in order already.
        if (timed.Length > 0) _raw.Sort(Raw.Compare);
        if (options.DriftSdLogits > 0)
        {
            foreach (var raw in _raw) if (raw.Lesson > 0 && !States.Contains(raw.Lesson)) States.Add(raw.Lesson);
            States.Sort();
        }
        Merge();
    }

    private void AddTimed(ResponseTrial trial, int lesson)
    {
        var (held, doseS) = (trial.HeldS!.Value, data.Levels[trial.Level].Dose!.Value.Amount);
        if (trial.Successes == 0 ? held - options.StopwatchStepS / 2 >= doseS : held + options.StopwatchStepS / 2 < doseS) LeftAside++;
        else if (trial.Successes == 0 && FallTerms.Of(held, doseS, options) is { } fall)
        {
            foreach (var (tau, m, a) in fall.Terms) _raw.Add(new(trial.Level, lesson, tau, m, a));
            Pieces.AddRange(fall.Pieces);
            return;
        }
        _raw.Add(new(trial.Level, lesson, 0, 1, trial.Successes));
    }

    private void Merge()
    {
        foreach (var (level, lesson, tau, m, a) in _raw)
        {
            if (Own.Count == 0 || Own[^1] != level) Own.Add(level);
            var term = new Term((ushort)(Own.Count - 1), (short)(lesson > 0 ? States.IndexOf(lesson) : -1), (ushort)lesson, m, a);
            HasTimes |= tau != 0;
            LastLesson = Math.Max(LastLesson, lesson);
            if (Terms.Count > 0 && Terms[^1] is var last && last.Own == term.Own && last.Lesson == term.Lesson && Taus[^1] == tau)
                Terms[^1] = last with { M = last.M + m, A = last.A + a };
            else
            {
                Terms.Add(term);
                Taus.Add(tau);
            }
        }
    }

    private readonly record struct Raw(int Level, int Lesson, double Tau, float M, float A)
    {
        public static readonly Comparison<Raw> Compare = (x, y) =>
            x.Level != y.Level ? x.Level.CompareTo(y.Level) : x.Lesson != y.Lesson ? x.Lesson.CompareTo(y.Lesson) : x.Tau.CompareTo(y.Tau);
    }
}
