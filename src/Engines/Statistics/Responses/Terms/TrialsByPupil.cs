namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>Which trials are whose, by place in the list, without copying any.</summary>
internal sealed class TrialsByPupil
{
    private readonly int[] _start, _places;

    private TrialsByPupil(int[] start, int[] places) => (_start, _places) = (start, places);

    public ReadOnlySpan<int> Of(int pupil) => _places.AsSpan(_start[pupil], _start[pupil + 1] - _start[pupil]);

    public static TrialsByPupil Of(ResponseData data)
    {
        var start = new int[data.Pupils.Count + 1];
        foreach (var trial in data.Trials) start[trial.Pupil + 1]++;
        for (var i = 0; i < data.Pupils.Count; i++) start[i + 1] += start[i];
        var (places, next) = (new int[data.Trials.Count], start[..^1]);
        for (var k = 0; k < data.Trials.Count; k++) places[next[data.Trials[k].Pupil]++] = k;
        return new(start, places);
    }
}
