namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>All trials as terms, pupil by pupil, in an order that does not depend on the order given.</summary>
internal sealed class TermTable
{
    private readonly int[] _termStart, _ownStart, _stateStart;
    private readonly Term[] _terms;
    private readonly int[] _own, _states;

    private TermTable(List<Term>[] terms, List<int>[] own, List<int>[] states, HoldShape shape, int leftAside)
    {
        (_termStart, _terms) = Joined(terms);
        (_ownStart, _own) = Joined(own);
        (_stateStart, _states) = Joined(states);
        (Shape, TimesLeftAside) = (shape, leftAside);
    }

    public int PupilCount => _termStart.Length - 1;

    public int TermCount => _terms.Length;

    public int StateCount => _states.Length;

    public HoldShape Shape { get; }

    /// <summary>Times that contradict their tick: the tick counts.</summary>
    public int TimesLeftAside { get; }

    public ReadOnlySpan<Term> Terms(int pupil) => _terms.AsSpan(_termStart[pupil], _termStart[pupil + 1] - _termStart[pupil]);

    /// <summary>The levels a pupil has tried, ascending.</summary>
    public ReadOnlySpan<int> Own(int pupil) => _own.AsSpan(_ownStart[pupil], _ownStart[pupil + 1] - _ownStart[pupil]);

    /// <summary>The lessons after the first of all in which a pupil has tried anything, ascending; empty without drift.</summary>
    public ReadOnlySpan<int> States(int pupil) => _states.AsSpan(_stateStart[pupil], _stateStart[pupil + 1] - _stateStart[pupil]);

    /// <summary>Where a pupil's states begin among the states of all.</summary>
    public int StateStart(int pupil) => _stateStart[pupil];

    public int Max(Func<int, int> count) => Enumerable.Range(0, PupilCount).Select(count).DefaultIfEmpty(0).Max();

    /// <summary>Trials as terms.</summary>
    /// <param name="data">The trials.</param>
    /// <param name="options">How times are read, and whether lessons matter.</param>
    /// <param name="hasLessons">Whether the model tells lessons apart at all.</param>
    /// <param name="isUsed">Levels whose trials count.</param>
    public static TermTable Of(ResponseData data, ResponseOptions options, bool hasLessons, Func<int, bool> isUsed)
    {
        var raw = new List<(int Level, int Lesson, double Tau, float M, float A)>[data.Pupils.Count];
        for (var i = 0; i < raw.Length; i++) raw[i] = [];
        var pieces = new List<HoldShape.Piece>();
        var leftAside = 0;
        foreach (var trial in data.Trials)
        {
            if (!isUsed(trial.Level)) continue;
            var lesson = hasLessons ? trial.Lesson : 0;
            if (trial.HeldS is { } held)
            {
                var doseS = data.Levels[trial.Level].Dose!.Value.Amount;
                if (trial.Successes == 0 ? held - options.StopwatchStepS / 2 >= doseS : held + options.StopwatchStepS / 2 < doseS) leftAside++;
                else if (trial.Successes == 0 && FallTerms.Of(held, doseS, options) is { } fall)
                {
                    foreach (var (tau, m, a) in fall.Terms) raw[trial.Pupil].Add((trial.Level, lesson, tau, m, a));
                    pieces.AddRange(fall.Pieces);
                    continue;
                }
            }
            raw[trial.Pupil].Add((trial.Level, lesson, 0, trial.Trials, trial.Successes));
        }

        var terms = new List<Term>[raw.Length];
        var own = new List<int>[raw.Length];
        var states = new List<int>[raw.Length];
        for (var i = 0; i < raw.Length; i++)
        {
            raw[i].Sort((x, y) => (x.Level, x.Lesson, x.Tau).CompareTo((y.Level, y.Lesson, y.Tau)));
            own[i] = [.. raw[i].Select(t => t.Level).Distinct()];
            states[i] = options.DriftSdLogits > 0 ? [.. raw[i].Select(t => t.Lesson).Where(l => l > 0).Distinct().Order()] : [];
            terms[i] = Merged(raw[i], own[i], states[i]);
        }
        return new(terms, own, states, new(pieces, terms.Any(t => t.Any(x => x.Tau != 0))), leftAside);
    }

    private static List<Term> Merged(List<(int Level, int Lesson, double Tau, float M, float A)> raw, List<int> own, List<int> states)
    {
        var merged = new List<Term>(raw.Count);
        foreach (var (level, lesson, tau, m, a) in raw)
        {
            var term = new Term(own.BinarySearch(level), states.BinarySearch(lesson) is >= 0 and var s ? s : -1, lesson, tau, m, a);
            if (merged.Count > 0 && merged[^1] is var last && last.Own == term.Own && last.Lesson == term.Lesson && last.Tau == term.Tau)
                merged[^1] = last with { M = last.M + m, A = last.A + a };
            else merged.Add(term);
        }
        return merged;
    }

    private static (int[] Start, T[] All) Joined<T>(List<T>[] lists)
    {
        var start = new int[lists.Length + 1];
        for (var i = 0; i < lists.Length; i++) start[i + 1] = start[i] + lists[i].Count;
        var all = new T[start[^1]];
        for (var i = 0; i < lists.Length; i++) lists[i].CopyTo(all, start[i]);
        return (start, all);
    }
}
