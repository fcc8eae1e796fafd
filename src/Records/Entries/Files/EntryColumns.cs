using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Records.Entries.Files;

/// <summary>The headings a table of entries may use.</summary>
internal static class EntryColumns
{
    private static readonly Dictionary<string, EntryColumn> Aliases = All();

    public static CsvColumns<EntryColumn> Of(CsvTable table, List<Finding> findings) => CsvColumns<EntryColumn>.Of(table, Aliases, findings);

    /// <summary>The column of a trial written in a column of its own.</summary>
    public static EntryColumn OfTrial(int trialNumber) => EntryColumn.Trial1 + trialNumber - 1;

    private static Dictionary<string, EntryColumn> All()
    {
        Dictionary<string, EntryColumn> aliases = new()
        {
            ["pupil"] = EntryColumn.Pupil, ["code"] = EntryColumn.Pupil, ["pupilcode"] = EntryColumn.Pupil,
            ["alumno"] = EntryColumn.Pupil, ["codigo"] = EntryColumn.Pupil,
            ["task"] = EntryColumn.Task, ["tarea"] = EntryColumn.Task,
            ["set"] = EntryColumn.Set, ["serie"] = EntryColumn.Set,
            ["level"] = EntryColumn.Level, ["nivel"] = EntryColumn.Level,
            ["prediction"] = EntryColumn.Prediction, ["prediccion"] = EntryColumn.Prediction, ["pronostico"] = EntryColumn.Prediction,
            ["trials"] = EntryColumn.Trials, ["intentos"] = EntryColumn.Trials,
            ["cues"] = EntryColumn.Cues, ["claves"] = EntryColumn.Cues, ["criterios"] = EntryColumn.Cues,
            ["decision"] = EntryColumn.Decision,
            ["reason"] = EntryColumn.Reason, ["motivo"] = EntryColumn.Reason,
        };
        for (var number = 1; number <= Limits.TrialCount; number++)
        {
            aliases[$"trial{number}"] = OfTrial(number);
            aliases[$"intento{number}"] = OfTrial(number);
        }
        return aliases;
    }
}
