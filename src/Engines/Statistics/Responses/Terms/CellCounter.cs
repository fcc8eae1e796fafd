namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>Takes trials one after the other and keeps twelve bytes of each until all are there.</summary>
internal sealed class CellCounter
{
    private const int PartSize = 1 << 16;

    private readonly List<(int[] Pupils, TrialCell[] Cells, int Count)> _parts = [];
    private readonly List<ResponseTrial> _timed = [];
    private int[] _pupils = [];
    private TrialCell[] _cells = [];
    private int _count;
    private bool _isOrdered = true;

    public void Add(in ResponseTrial trial)
    {
        if (trial.HeldS is not null)
        {
            _timed.Add(trial);
            return;
        }
        if (trial.Trials <= TrialCell.MostTrials) Put(trial.Pupil, new((ushort)trial.Level, (ushort)trial.Lesson, (ushort)trial.Trials, (ushort)trial.Successes));
        else Split(trial);
    }

    /// <summary>All of them; the counter is then empty.</summary>
    public TrialCells Take(int pupilCount)
    {
        if (_count > 0) _parts.Add((_pupils, _cells, _count));
        (_pupils, _cells, _count) = ([], [], 0);
        var cells = TrialCells.Of(pupilCount, _parts, _timed);
        _parts.Clear();
        return cells;
    }

    private void Split(in ResponseTrial trial)
    {
        var (trials, successes) = (trial.Trials, trial.Successes);
        while (trials > 0)
        {
            var (n, s) = (Math.Min(trials, TrialCell.MostTrials), Math.Min(successes, TrialCell.MostTrials));
            Put(trial.Pupil, new((ushort)trial.Level, (ushort)trial.Lesson, (ushort)n, (ushort)Math.Min(n, s)));
            (trials, successes) = (trials - n, successes - Math.Min(n, s));
        }
    }

    private void Put(int pupil, TrialCell cell)
    {
        if (_count == _cells.Length) MakeRoom();
        _isOrdered &= _count == 0 || _pupils[_count - 1] <= pupil;
        (_pupils[_count], _cells[_count++]) = (pupil, cell);
    }

    private void MakeRoom()
    {
        // Where trials come pupil by pupil, those alike are made one at once, and the room is used again.
        if (_isOrdered && _count == PartSize && Compact() < PartSize * 3 / 4) return;
        if (_count > 0) _parts.Add((_pupils, _cells, _count));
        // A class is small, and its counters come and go in a lesson.
        var size = _parts.Count == 0 ? 256 : _parts.Count < 8 ? 4096 : PartSize;
        (_pupils, _cells, _count, _isOrdered) = (new int[size], new TrialCell[size], 0, true);
    }

    private int Compact()
    {
        var end = 0;
        for (var first = 0; first < _count;)
        {
            var (pupil, next) = (_pupils[first], first + 1);
            while (next < _count && _pupils[next] == pupil) next++;
            var own = _cells.AsSpan(first, next - first);
            var left = own[..TrialCells.Merge(own)];
            left.CopyTo(_cells.AsSpan(end));
            _pupils.AsSpan(end, left.Length).Fill(pupil);
            (first, end) = (next, end + left.Length);
        }
        return _count = end;
    }
}
