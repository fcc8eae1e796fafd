namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>All trials, pupil by pupil: those without a time counted together, those with one as they are. The order given plays no part.</summary>
internal sealed class TrialCells
{
    private readonly int[] _start, _timedStart;
    private readonly TrialCell[] _cells;
    private readonly ResponseTrial[] _timed;

    private TrialCells(int[] start, TrialCell[] cells, int[] timedStart, ResponseTrial[] timed) => (_start, _cells, _timedStart, _timed) = (start, cells, timedStart, timed);

    public int PupilCount => _start.Length - 1;

    public int CellCount => _start[^1];

    /// <summary>Whether there are trials in more than one lesson.</summary>
    public bool HasLessons
    {
        get
        {
            int? first = null;
            foreach (var cell in _cells.AsSpan(0, CellCount)) if ((first ??= cell.Lesson) != cell.Lesson) return true;
            foreach (var trial in _timed) if ((first ??= trial.Lesson) != trial.Lesson) return true;
            return false;
        }
    }

    /// <summary>Those with a time, by pupil, level and lesson.</summary>
    public ReadOnlySpan<ResponseTrial> AllTimed => _timed;

    /// <summary>A pupil's cells, by level and lesson.</summary>
    public ReadOnlySpan<TrialCell> Of(int pupil) => pupil >= PupilCount ? [] : _cells.AsSpan(_start[pupil], _start[pupil + 1] - _start[pupil]);

    public ReadOnlySpan<ResponseTrial> Timed(int pupil) => _timed.Length == 0 || pupil >= PupilCount ? [] : _timed.AsSpan(_timedStart[pupil], _timedStart[pupil + 1] - _timedStart[pupil]);

    /// <summary>One trial, or a cell, by its place: cells first.</summary>
    public ResponseTrial At(int k)
    {
        if (k >= CellCount) return _timed[k - CellCount];
        var pupil = Array.BinarySearch(_start, k);
        if (pupil < 0) pupil = ~pupil - 1;
        while (_start[pupil + 1] == k) pupil++;
        return new(pupil, _cells[k].Level, _cells[k].Lesson, _cells[k].Successes, _cells[k].Trials);
    }

    /// <summary>Trials counted together.</summary>
    /// <param name="pupilCount">How many pupils there are.</param>
    /// <param name="parts">Trials with their pupils, any order; taken apart on the way, so that they do not lie in memory twice.</param>
    /// <param name="timed">Those with a time.</param>
    public static TrialCells Of(int pupilCount, List<(int[] Pupils, TrialCell[] Cells, int Count)> parts, List<ResponseTrial> timed)
    {
        var start = new int[pupilCount + 1];
        foreach (var (pupils, _, count) in parts)
            for (var k = 0; k < count; k++) start[pupils[k] + 1]++;
        for (var i = 0; i < pupilCount; i++) start[i + 1] += start[i];
        var (cells, next) = (new TrialCell[start[^1]], start[..^1]);
        for (var p = 0; p < parts.Count; p++)
        {
            var (pupils, own, count) = parts[p];
            for (var k = 0; k < count; k++) cells[next[pupils[k]]++] = own[k];
            parts[p] = default;
        }
        return new(start, Merged(cells, start), TimedStart(timed, pupilCount, out var sorted), sorted);
    }

    /// <summary>Sorts one pupil's cells, makes one of those that are alike, and returns how many are left at the beginning.</summary>
    public static int Merge(Span<TrialCell> cells)
    {
        Sort(cells);
        var end = 0;
        foreach (var cell in cells)
        {
            if (end > 0 && cells[end - 1] is var last && last.Place == cell.Place && last.Trials + cell.Trials <= TrialCell.MostTrials)
                cells[end - 1] = last with { Trials = (ushort)(last.Trials + cell.Trials), Successes = (ushort)(last.Successes + cell.Successes) };
            else cells[end++] = cell;
        }
        return end;
    }

    /// <summary>The cells pupil by pupil, those alike made one; the starts move along.</summary>
    private static TrialCell[] Merged(TrialCell[] cells, int[] start)
    {
        var (end, first) = (0, 0);
        for (var i = 0; i < start.Length - 1; i++)
        {
            var own = cells.AsSpan(first, start[i + 1] - first);
            (first, start[i]) = (start[i + 1], end);
            var left = own[..Merge(own)];
            left.CopyTo(cells.AsSpan(end));
            end += left.Length;
        }
        start[^1] = end;
        // A copy costs memory, too, for a while.
        return end > 0.9 * cells.Length ? cells : cells[..end];
    }

    private static void Sort(Span<TrialCell> cells)
    {
        if (cells.Length > 40)
        {
            cells.Sort((x, y) => x.Place != y.Place ? x.Place.CompareTo(y.Place) : x.Trials != y.Trials ? x.Trials.CompareTo(y.Trials) : x.Successes.CompareTo(y.Successes));
            return;
        }
        for (var k = 1; k < cells.Length; k++)
        {
            var cell = cells[k];
            var at = k;
            for (; at > 0 && cells[at - 1].Place > cell.Place; at--) cells[at] = cells[at - 1];
            cells[at] = cell;
        }
    }

    private static int[] TimedStart(List<ResponseTrial> timed, int pupilCount, out ResponseTrial[] sorted)
    {
        sorted = [.. timed];
        if (sorted.Length == 0) return [];
        sorted.AsSpan().Sort((x, y) => x.Pupil != y.Pupil ? x.Pupil.CompareTo(y.Pupil) : x.Level != y.Level ? x.Level.CompareTo(y.Level)
            : x.Lesson != y.Lesson ? x.Lesson.CompareTo(y.Lesson) : x.HeldS != y.HeldS ? x.HeldS!.Value.CompareTo(y.HeldS!.Value) : x.Successes.CompareTo(y.Successes));
        var start = new int[pupilCount + 1];
        foreach (var trial in sorted) start[trial.Pupil + 1]++;
        for (var i = 0; i < pupilCount; i++) start[i + 1] += start[i];
        return start;
    }
}
