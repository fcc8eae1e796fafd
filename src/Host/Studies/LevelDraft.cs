using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>A level as far as the rows read so far describe it; any table may tell a part, none may contradict another.</summary>
internal sealed class LevelDraft(string name, int covariateCount)
{
    private readonly Dictionary<string, (string Said, string Text, CsvRow Row)> _told = [];

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

    /// <summary>Takes note of what a row says; where an earlier one said otherwise, what that was and on which line.</summary>
    /// <param name="what">Of what.</param>
    /// <param name="said">What, in a form in which the same is the same.</param>
    /// <param name="text">What, as written.</param>
    /// <param name="row">The row.</param>
    public (string Text, CsvRow Row)? Told(string what, string said, string text, CsvRow row)
    {
        if (_told.TryAdd(what, (said, text, row))) return null;
        var earlier = _told[what];
        return earlier.Said == said ? null : (earlier.Text, earlier.Row);
    }
}
