using System.Runtime.InteropServices;

namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>All trials as terms, pupil by pupil, in an order that does not depend on the order given.</summary>
internal sealed class TermTable
{
    private readonly int[] _termStart, _ownStart, _stateStart;
    private readonly List<Term> _terms;
    private readonly int[] _own, _states;

    private TermTable((int[] Start, List<Term> All) terms, (int[] Start, int[] All) own, (int[] Start, int[] All) states, HoldShape shape, int leftAside)
    {
        ((_termStart, _terms), (_ownStart, _own), (_stateStart, _states)) = (terms, own, states);
        (Shape, TimesLeftAside) = (shape, leftAside);
        (MostTerms, MostOwn, MostStates) = (Most(_termStart), Most(_ownStart), Most(_stateStart));
    }

    public int PupilCount => _termStart.Length - 1;

    public int TermCount => _terms.Count;

    public int StateCount => _states.Length;

    /// <summary>The most terms, levels and lessons of one pupil: how much working space is needed.</summary>
    public int MostTerms { get; }

    public int MostOwn { get; }

    public int MostStates { get; }

    public HoldShape Shape { get; }

    /// <summary>Times that contradict their tick: the tick counts.</summary>
    public int TimesLeftAside { get; }

    public ReadOnlySpan<Term> Terms(int pupil) => CollectionsMarshal.AsSpan(_terms).Slice(_termStart[pupil], _termStart[pupil + 1] - _termStart[pupil]);

    /// <summary>The levels a pupil has tried, ascending.</summary>
    public ReadOnlySpan<int> Own(int pupil) => _own.AsSpan(_ownStart[pupil], _ownStart[pupil + 1] - _ownStart[pupil]);

    /// <summary>The lessons after the first of all in which a pupil has tried anything, ascending; empty without drift.</summary>
    public ReadOnlySpan<int> States(int pupil) => _states.AsSpan(_stateStart[pupil], _stateStart[pupil + 1] - _stateStart[pupil]);

    /// <summary>Where a pupil's states begin among the states of all.</summary>
    public int StateStart(int pupil) => _stateStart[pupil];

    /// <summary>Trials as terms.</summary>
    /// <param name="data">The trials.</param>
    /// <param name="options">How times are read, and whether abilities wander.</param>
    /// <param name="hasLessons">Whether the model tells lessons apart at all.</param>
    /// <param name="isUsed">Levels whose trials count.</param>
    public static TermTable Of(ResponseData data, ResponseOptions options, bool hasLessons, bool[] isUsed)
    {
        var byPupil = TrialsByPupil.Of(data);
        var pieces = new List<HoldShape.Piece>();
        var (terms, own, states) = (new List<Term>(data.Trials.Count), new List<int>(), new List<int>());
        var (termStart, ownStart, stateStart) = (new int[data.Pupils.Count + 1], new int[data.Pupils.Count + 1], new int[data.Pupils.Count + 1]);
        var raw = new List<Raw>();
        var leftAside = 0;
        for (var i = 0; i < data.Pupils.Count; i++)
        {
            raw.Clear();
            foreach (var place in byPupil.Of(i))
            {
                var trial = data.Trials[place];
                if (isUsed[trial.Level]) leftAside += AddTo(raw, pieces, trial, hasLessons ? trial.Lesson : 0, data.Levels[trial.Level], options);
            }
            raw.Sort(Raw.Compare);
            if (options.DriftSdLogits > 0) states.AddRange(raw.Select(r => r.Lesson).Where(l => l > 0).Distinct().Order());
            Merge(raw, terms, own, states, ownStart[i], stateStart[i], termStart[i]);
            (termStart[i + 1], ownStart[i + 1], stateStart[i + 1]) = (terms.Count, own.Count, states.Count);
        }
        var hasTimes = terms.Exists(t => t.Tau != 0);
        return new((termStart, terms), (ownStart, [.. own]), (stateStart, [.. states]), new(pieces, hasTimes), leftAside);
    }

    /// <summary>One trial; returns 1 where its time had to be left aside.</summary>
    private static int AddTo(List<Raw> raw, List<HoldShape.Piece> pieces, ResponseTrial trial, int lesson, ResponseLevel level, ResponseOptions options)
    {
        var leftAside = 0;
        if (trial.HeldS is { } held)
        {
            var doseS = level.Dose!.Value.Amount;
            if (trial.Successes == 0 ? held - options.StopwatchStepS / 2 >= doseS : held + options.StopwatchStepS / 2 < doseS) leftAside = 1;
            else if (trial.Successes == 0 && FallTerms.Of(held, doseS, options) is { } fall)
            {
                foreach (var (tau, m, a) in fall.Terms) raw.Add(new(trial.Level, lesson, tau, m, a));
                pieces.AddRange(fall.Pieces);
                return 0;
            }
        }
        raw.Add(new(trial.Level, lesson, 0, trial.Trials, trial.Successes));
        return leftAside;
    }

    private static void Merge(List<Raw> raw, List<Term> terms, List<int> own, List<int> states, int firstOwn, int firstState, int firstTerm)
    {
        foreach (var (level, lesson, tau, m, a) in raw)
        {
            if (own.Count == firstOwn || own[^1] != level) own.Add(level);
            var state = lesson > 0 && states.Count > firstState ? states.IndexOf(lesson, firstState) - firstState : -1;
            var term = new Term(own.Count - 1 - firstOwn, state, lesson, tau, m, a);
            if (terms.Count > firstTerm && terms[^1] is var last && last.Own == term.Own && last.Lesson == term.Lesson && last.Tau == term.Tau)
                terms[^1] = last with { M = last.M + m, A = last.A + a };
            else terms.Add(term);
        }
    }

    private static int Most(int[] start)
    {
        var most = 0;
        for (var i = 1; i < start.Length; i++) most = Math.Max(most, start[i] - start[i - 1]);
        return most;
    }

    private readonly record struct Raw(int Level, int Lesson, double Tau, float M, float A)
    {
        public static readonly Comparison<Raw> Compare = (x, y) =>
            x.Level != y.Level ? x.Level.CompareTo(y.Level) : x.Lesson != y.Lesson ? x.Lesson.CompareTo(y.Lesson) : x.Tau.CompareTo(y.Tau);
    }
}
