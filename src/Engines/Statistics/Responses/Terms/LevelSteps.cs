namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>For each level the levels that somebody managed who missed this one.</summary>
internal sealed class LevelSteps(int levels)
{
    private readonly int _words = (levels + 63) / 64;
    private readonly ulong[] _steps = new ulong[levels * ((levels + 63) / 64)];

    public bool Has(int from, int to) => (_steps[from * _words + to / 64] >> (to % 64) & 1) != 0;

    public static LevelSteps Of(ResponseData data)
    {
        var steps = new LevelSteps(data.Levels.Count);
        var managed = new ulong[steps._words];
        for (var i = 0; i < data.Pupils.Count; i++)
        {
            Array.Clear(managed);
            var cells = data.Cells.Of(i);
            var timed = data.Cells.Timed(i);
            foreach (var cell in cells) if (cell.Successes > 0) managed[cell.Level / 64] |= 1UL << (cell.Level % 64);
            foreach (var trial in timed) if (trial.Successes > 0) managed[trial.Level / 64] |= 1UL << (trial.Level % 64);
            foreach (var cell in cells) if (cell.Successes < cell.Trials) steps.Add(cell.Level, managed);
            foreach (var trial in timed) if (trial.Successes == 0) steps.Add(trial.Level, managed);
        }
        return steps;
    }

    private void Add(int level, ulong[] managed)
    {
        for (var w = 0; w < managed.Length; w++) _steps[level * _words + w] |= managed[w];
    }
}
