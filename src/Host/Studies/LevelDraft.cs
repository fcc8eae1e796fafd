using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Host.Studies;

/// <summary>A level as far as the rows read so far describe it; any table may tell a part, none may contradict another.</summary>
internal sealed class LevelDraft(string name, int covariateCount)
{
    private readonly Dictionary<string, (string Text, string At)> _told = [];

    public string Name => name;

    public string? Task { get; set; }

    public double? Amount { get; set; }

    public DoseMeasure Measure { get; set; } = DoseMeasure.Hold;

    public double? Order { get; set; }

    public double? OrderLogits { get; set; }

    public double?[] Covariates { get; } = new double?[covariateCount];

    public LevelDose? Dose => Amount is not { } amount ? null : Measure switch
    {
        DoseMeasure.Repetitions => LevelDose.Repetitions((int)amount),
        DoseMeasure.Distance => LevelDose.Distance(amount),
        DoseMeasure.Height => LevelDose.Height(amount),
        DoseMeasure.TargetSize => LevelDose.TargetSize(amount),
        _ => LevelDose.Hold(amount),
    };

    /// <summary>Takes note of what a row says; where an earlier one said otherwise, what that was and where.</summary>
    public (string Text, string At)? Told(string what, string text, string at) =>
        _told.TryAdd(what, (text, at)) || _told[what].Text == text ? null : _told[what];
}
