namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>All trials as terms, pupil by pupil, in an order that does not depend on the order given.</summary>
internal sealed class TermTable
{
    // Pupils that one thread takes at once while the table is made.
    private const int Share = 4096;

    private readonly int[] _termStart, _ownStart, _stateStart, _own, _states;
    private readonly Term[] _terms;
    private readonly double[] _taus;

    private TermTable(int[] termStart, int[] ownStart, int[] stateStart, bool hasTimes, HoldShape shape, int leftAside, int mostLesson)
    {
        (_termStart, _ownStart, _stateStart) = (Summed(termStart), Summed(ownStart), Summed(stateStart));
        (_terms, _own, _states) = (new Term[_termStart[^1]], new int[_ownStart[^1]], new int[_stateStart[^1]]);
        _taus = hasTimes ? new double[_terms.Length] : [];
        (Shape, TimesLeftAside, MostLesson) = (shape, leftAside, mostLesson);
        (MostTerms, MostOwn, MostStates) = (Most(_termStart), Most(_ownStart), Most(_stateStart));
    }

    public int PupilCount => _termStart.Length - 1;

    public int TermCount => _terms.Length;

    public int StateCount => _states.Length;

    /// <summary>The most terms, levels and lessons of one pupil: how much working space is needed.</summary>
    public int MostTerms { get; }

    public int MostOwn { get; }

    public int MostStates { get; }

    /// <summary>The latest lesson that is told apart.</summary>
    public int MostLesson { get; }

    public HoldShape Shape { get; }

    /// <summary>Times that contradict their tick: the tick counts.</summary>
    public int TimesLeftAside { get; }

    public ReadOnlySpan<Term> Terms(int pupil) => _terms.AsSpan(_termStart[pupil], _termStart[pupil + 1] - _termStart[pupil]);

    /// <summary>τ by term; empty where nobody has a time.</summary>
    public ReadOnlySpan<double> Taus(int pupil) => _taus.Length == 0 ? [] : _taus.AsSpan(_termStart[pupil], _termStart[pupil + 1] - _termStart[pupil]);

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
    /// <param name="threads">How many threads may make it.</param>
    public static TermTable Of(ResponseData data, ResponseOptions options, bool hasLessons, bool[] isUsed, int threads)
    {
        var pupils = data.Pupils.Count;
        var (terms, own, states) = (new int[pupils + 1], new int[pupils + 1], new int[pupils + 1]);
        var shares = (pupils + Share - 1) / Share;
        var (pieces, leftAside, hasTimes, lessons) = (new List<HoldShape.Piece>[shares], new int[shares], new bool[shares], new int[shares]);
        // Twice over the pupils: to count, and then to write each in its place. That needs no memory but the table's own.
        EachShare(threads, shares, s =>
        {
            var (one, found) = (new PupilTerms(data, options, hasLessons, isUsed), new List<HoldShape.Piece>());
            for (var i = s * Share; i < Math.Min(pupils, (s + 1) * Share); i++)
            {
                one.Make(i);
                (terms[i + 1], own[i + 1], states[i + 1]) = (one.Terms.Count, one.Own.Count, one.States.Count);
                found.AddRange(one.Pieces);
                leftAside[s] += one.LeftAside;
                hasTimes[s] |= one.HasTimes;
                lessons[s] = Math.Max(lessons[s], one.LastLesson);
            }
            pieces[s] = found;
        });
        var isTimed = hasTimes.Contains(true);
        var table = new TermTable(terms, own, states, isTimed, new(pieces.SelectMany(p => p), isTimed), leftAside.Sum(), lessons.DefaultIfEmpty(0).Max());
        EachShare(threads, shares, s =>
        {
            var one = new PupilTerms(data, options, hasLessons, isUsed);
            for (var i = s * Share; i < Math.Min(pupils, (s + 1) * Share); i++) table.Write(i, one);
        });
        return table;
    }

    private static void EachShare(int threads, int shares, Action<int> work)
    {
        if (threads > 1 && shares > 1) Parallel.For(0, shares, new ParallelOptions { MaxDegreeOfParallelism = threads }, work);
        else for (var s = 0; s < shares; s++) work(s);
    }

    private static int[] Summed(int[] counts)
    {
        for (var i = 1; i < counts.Length; i++) counts[i] += counts[i - 1];
        return counts;
    }

    private static int Most(int[] start)
    {
        var most = 0;
        for (var i = 1; i < start.Length; i++) most = Math.Max(most, start[i] - start[i - 1]);
        return most;
    }

    private void Write(int pupil, PupilTerms one)
    {
        one.Make(pupil);
        one.Terms.CopyTo(_terms, _termStart[pupil]);
        if (_taus.Length > 0) one.Taus.CopyTo(_taus, _termStart[pupil]);
        one.Own.CopyTo(_own, _ownStart[pupil]);
        one.States.CopyTo(_states, _stateStart[pupil]);
    }
}
